import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** Where `loomwright serve` listens while `npm run dev` serves the page from its sources. */
const server = process.env.LOOMWRIGHT_SERVER ?? 'http://127.0.0.1:4747'

export default defineConfig({
  root: 'src/web',
  plugins: [react()],
  cacheDir: '../../node_modules/.cache/vite',
  build: { outDir: '../../dist/page', emptyOutDir: true, target: 'es2022', chunkSizeWarningLimit: 1000 },
  worker: { format: 'es' },
  server: { proxy: { '/api': { target: server, changeOrigin: false } } },
})
