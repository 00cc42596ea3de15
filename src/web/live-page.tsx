import { useCallback } from 'react'
import type { Setting } from '../tasks/index.ts'
import { Controls } from './controls.tsx'
import { Drawing } from './drawing.tsx'
import { FactsPanel } from './facts-panel.tsx'
import { Header } from './header.tsx'
import { PrintedSetting } from './printed.tsx'
import { Refusal } from './refusal.tsx'
import { useAddress } from './use-address.ts'
import { usePicked } from './use-picked.ts'
import { useRecord } from './use-record.ts'
import { useVehicle } from './use-vehicle.ts'

/** One vehicle, alive: controls, drawing, facts. */
export function LivePage() {
  const hold = useVehicle()
  const record = useRecord(hold.open)
  const { move, choose } = useAddress(hold)
  const { shown } = hold
  const { opened, refused, stand } = shown
  const { pick, close } = usePicked(stand, move)
  const set = useCallback((change: Partial<Setting>) => { move({ setting: { ...stand.setting, ...change } }) }, [move, stand.setting])
  return (
    <div className={['page', ...stand.pick && shown.facts ? ['has-facts'] : [], ...shown.card ? ['has-card'] : []].join(' ')}>
      <Header record={record} vehicles={opened ?? refused} under={opened?.under ?? ''} choose={choose} />
      <Trouble said={[record.trouble, shown.failed, ...shown.ignored]} />
      {refused ? <Refusal refused={refused} /> : (
        <>
          <PrintedSetting shown={shown} />
          <Controls opened={opened} positions={shown.positions} setting={stand.setting} move={set} />
          <Drawing shown={shown} pick={pick} move={move} measure={hold.measure} find={hold.find} />
          <FactsPanel shown={shown} move={set} close={close} showCard={() => { move({ card: true }) }} />
        </>
      )}
    </div>
  )
}

function Trouble({ said }: { readonly said: readonly string[] }) {
  const text = said.filter((sentence) => sentence !== '').join(' ')
  return text === '' ? null : <p className="trouble" role="alert">{text}</p>
}
