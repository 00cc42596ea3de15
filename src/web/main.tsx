import '@fontsource/barlow/latin-400.css'
import '@fontsource/barlow/latin-500.css'
import '@fontsource/barlow/latin-600.css'
import '@fontsource/barlow-semi-condensed/latin-400.css'
import '@fontsource/barlow-semi-condensed/latin-600.css'
import './page.css'
import { createRoot } from 'react-dom/client'
import { LivePage } from './live-page.tsx'

const root = document.getElementById('page')
if (!root) throw new RangeError('expected an element with the id page')
createRoot(root).render(<LivePage />)
