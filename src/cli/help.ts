const DEMO = 'examples/vehicles/tessarby-errand.json'

const VEHICLE = `Which vehicle
  --year N   --serial SERIES=NUMBER   --market ID   --option ID   --option ID=no`

const SETTING = `Which setting (whatever is not named is at rest)
  --set control=position, --set control.axis=position      as often as needed
  --engine stopped|stopped-open|cranking|idle|cruise|RPM   stopped-open: the points stand apart
  --battery full|low                                       low: a quarter charged, resistance three times
  --phase part=name                                        where a wiper or flasher begins
  --then                                                   another setting after this one: what is made stays made if it can`

const FAULTS = `Faults, as often as needed
  --fault open:WIRE           a wire, one end of it (w12.1), a fixing, a part's element or all at a point
  --fault ohms:ID=N           N ohms added in series
  --fault join:A=B            two points touch
  --fault swap:A=B            what sits on A goes to B, and the other way round
  --fault set:PART.param=N    a parameter has another value
  --fault hold:PART=STATE     a state or a phase cannot move`

const OUTPUT = `What is printed
  --all-assumed               every value that was assumed, at every place; else what bears on the answer, in short
  --json                      the same as data, with every place; docs/json.md says what each field means`

const EXIT = 'Exit codes: 0 done; 2 the arguments or the record cannot be read, or the vehicle cannot be resolved.'

const CAUTION = `A computed result is a help to judgement and says what it assumed. Battery off before any work on the wiring;
local rules and licensed practice decide.`

/** What each command says of itself. */
export const HELP_OF: Readonly<Record<string, string>> = {
  check: [
    `loomwright check FILE [options]

Is the record sound, and does it give one wiring for every edition, or for the vehicle that is described? Says all that is
wrong at once, each with its place in the file; then what is joined to nothing, and for one vehicle what solving would have
to assume.`,
    VEHICLE, OUTPUT,
    'Exit codes: 0 one wiring for the vehicle; 1 a conflict, or it cannot be told which of several editions it is; 2 the arguments or the record cannot be read.',
    `Examples
  loomwright check ${DEMO}
  loomwright check ${DEMO} --year 1955`,
  ].join('\n\n'),
  solve: [
    `loomwright solve FILE [options]

What is live and how bright each lamp is, in a setting of the controls: volts, per cent and light of every lamp; volts at
both ends of every wire, its amps and its drop; contacts, flashers, dials and where the power goes.`,
    VEHICLE, SETTING, FAULTS, OUTPUT, EXIT,
    `Examples
  loomwright solve ${DEMO} --year 1960 --set switch-box.key=on --set switch-box.lights=head --engine idle
  loomwright solve ${DEMO} --year 1960 --set switch-box.key=start --engine cranking --then --set switch-box.key=on --engine idle
  loomwright solve ${DEMO} --year 1960 --set switch-box.key=on --set brake-switch=pressed --fault open:left-wing-bolts`,
    CAUTION,
  ].join('\n\n'),
  meter: [
    `loomwright meter FILE --volts A B [--meter OHMS] | --amps WIRE | --ohms A B | --series-lamp W   [options]

What a meter reads on the vehicle in one setting.
  --volts A B                 from point A to point B, with a meter of 10 MΩ or of --meter OHMS
  --amps WIRE                 in a wire, positive from its first end to its second
  --ohms A B                  between two points, battery off and filaments cold
  --series-lamp W             a lamp of W watts in series with the battery's live lead, as before first power`,
    VEHICLE, SETTING, FAULTS, OUTPUT, EXIT,
    `Examples
  loomwright meter ${DEMO} --year 1960 --set switch-box.lights=head --volts battery:+ head-left:56b
  loomwright meter ${DEMO} --year 1960 --ohms stop-left:L54 chassis
  loomwright meter ${DEMO} --year 1960 --series-lamp 21`,
    CAUTION,
  ].join('\n\n'),
  serve: `loomwright serve [FILE …] [--port N]

The live page, on this machine only: the drawing in its wire colours, what is live and how bright each lamp is as the
controls are turned. Without a file the two demo vehicles. Prints the address to open; Ctrl+C stops it.

Example
  loomwright serve ${DEMO}`,
}

/** What can be asked for, and what all commands have in common. */
export const HELP = [
  `loomwright — the wiring of an old road vehicle: read, resolved and truly solved

  loomwright check FILE            is the record sound, and does it give one wiring for every edition, or this vehicle?
  loomwright solve FILE            what is live, how bright each lamp is, in a setting of the controls
  loomwright meter FILE --volts A B [--meter OHMS] | --amps WIRE | --ohms A B | --series-lamp W
                                   what a meter reads; ohms with the battery off and cold filaments;
                                   a lamp of W watts in series with the battery's live lead
  loomwright serve [FILE …]        the live page, on this machine only   [--port N]

loomwright check --help, and so on, says more of one of them.`,
  VEHICLE, SETTING, FAULTS, OUTPUT,
  `Exit codes: 0 done; 1 check found a conflict, or cannot tell which edition is meant; 2 the arguments or the record cannot be
read, or the vehicle cannot be resolved.`,
  `Examples
  loomwright check ${DEMO} --year 1955
  loomwright solve ${DEMO} --year 1960 --set switch-box.key=on --set switch-box.lights=head --engine idle
  loomwright meter ${DEMO} --year 1960 --set switch-box.lights=head --volts battery:+ head-left:56b`,
  CAUTION,
].join('\n\n')
