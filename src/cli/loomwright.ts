#!/usr/bin/env node
import { processOut } from './out.ts'
import { runCommand } from './run-command.ts'

process.stdout.on('error', (error: NodeJS.ErrnoException) => { if (error.code === 'EPIPE') process.exit(0) })
process.exitCode = await runCommand(process.argv.slice(2), processOut())
