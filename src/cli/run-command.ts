import { HELP, HELP_OF } from './help.ts'
import type { Out } from './out.ts'
import { ArgumentError } from './read-arguments.ts'

type Command = (args: readonly string[], out: Out) => number | Promise<number>

/** Each command is loaded only when it is asked for. */
const COMMANDS: Readonly<Record<string, () => Promise<Command>>> = {
  check: async () => (await import('./commands/check.ts')).check,
  solve: async () => (await import('./commands/solve.ts')).solve,
  meter: async () => (await import('./commands/meter.ts')).meter,
  serve: async () => (await import('./commands/serve.ts')).serve,
}

/** Runs one command; answers its exit code. Wrong arguments and unreadable records are said, never thrown. */
export async function runCommand(args: readonly string[], out: Out): Promise<number> {
  const [name, ...rest] = args
  if (name === undefined || args.includes('--help') || name === 'help') {
    out.print(pageFor(name === 'help' ? rest[0] : name))
    return name === undefined ? 2 : 0
  }
  if (!Object.hasOwn(COMMANDS, name)) {
    out.complain(`there is no command "${name}"; there are ${Object.keys(COMMANDS).join(', ')}. loomwright --help says more.`)
    return 2
  }
  try {
    return await (await COMMANDS[name]())(rest, out)
  } catch (error) {
    if (!(error instanceof ArgumentError)) throw error
    out.complain([error.message, ...listNames(error.valid)].join('\n'))
    return 2
  }
}

/** A command's own page of help, or the one for all. */
function pageFor(command: string | undefined): string {
  return command !== undefined && Object.hasOwn(HELP_OF, command) ? HELP_OF[command] : HELP
}

const SHOWN_NAMES = 200
const LINE_LETTERS = 100

/** The valid names, as many in a line as fit. */
function listNames(valid: readonly string[]): string[] {
  if (valid.length === 0) return []
  const lines = ['']
  for (const name of valid.slice(0, SHOWN_NAMES)) {
    if (lines[lines.length - 1].length + name.length > LINE_LETTERS) lines.push('')
    lines[lines.length - 1] += `  ${name}`
  }
  return ['Valid are:', ...lines, ...valid.length > SHOWN_NAMES ? [`  … and ${valid.length - SHOWN_NAMES} more`] : []]
}
