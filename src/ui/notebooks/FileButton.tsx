/** A button that asks for a file. The input itself stays out of sight, and out of the way of the Tab key. */
export function FileButton(props: { label: string; accept: string; disabled?: boolean; onFile: (file: File) => void }) {
  let input: HTMLInputElement | undefined
  return (
    <>
      <button type="button" class="act" disabled={props.disabled ?? false} onClick={() => input?.click()}>
        {props.label}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={props.label}
        accept={props.accept}
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? []
          // Emptied, so that the same file chosen again is a change again.
          event.currentTarget.value = ''
          if (file) props.onFile(file)
        }}
      />
    </>
  )
}
