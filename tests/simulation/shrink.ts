/** The shortest script that still shows a fault: parts are left out as long as it does. */
export async function shrink(
  lines: readonly string[],
  stillBroken: (lines: string[]) => Promise<boolean>,
  mostTries = 400,
): Promise<string[]> {
  let kept = [...lines];
  let tries = 0;
  for (let size = Math.ceil(kept.length / 2); size >= 1; ) {
    let shorter = false;
    for (let at = 0; at < kept.length && tries < mostTries; ) {
      const fewer = [...kept.slice(0, at), ...kept.slice(at + size)];
      tries += 1;
      if (fewer.length < kept.length && (await stillBroken(fewer))) {
        kept = fewer;
        shorter = true;
      } else at += size;
    }
    if (size === 1 && (!shorter || tries >= mostTries)) break;
    size = Math.max(1, Math.floor(size / 2));
  }
  return kept;
}
