import { say } from '../../words/say'
import { downloadBlob, downloadText } from '../notebooks/downloadText'
import { announce } from '../shell/announce'
import type { Drawing } from './drawing'
import { pngOf } from './pngOf'
import { svgText } from './svgText'

/** A chart as a picture file: the same marks on light paper, in one width whatever the screen. */
export function SavePicture(props: { drawing: () => Drawing }) {
  async function savePng(): Promise<void> {
    const drawing = props.drawing()
    const picture = await pngOf(drawing)
    if (picture) downloadBlob(`${fileName(drawing)}.png`, picture)
    else announce(say('page.study.no_picture'))
  }
  return (
    <div class="acts pictures">
      <button
        type="button"
        class="act"
        onClick={() => {
          const drawing = props.drawing()
          downloadText(`${fileName(drawing)}.svg`, svgText(drawing), 'image/svg+xml')
        }}
      >
        {say('page.study.save_svg')}
      </button>
      <button type="button" class="act" onClick={savePng}>
        {say('page.study.save_png')}
      </button>
    </div>
  )
}

/** The title as a name that every file system takes. */
function fileName({ title }: Drawing): string {
  const name = title
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase()
  return name.slice(0, 80) || 'chart'
}
