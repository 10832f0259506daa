/** Jars on record: "P6", "clover 42", or the name of a batch and a number, BATCH:3. */
import type { Ref } from "../../kitchen/command.ts";
import type { Jar } from "../../kitchen/jars/jar.ts";
import type { LotOf } from "../../kitchen/jars/lots.ts";
import { lotsOf } from "../../kitchen/meant.ts";
import { wallOf } from "../../kitchen/state.ts";
import type { Context } from "../../language/context.ts";
import { jarsNamed } from "../../language/values/jar-names.ts";
import { type LotsWhen, lotsWhen } from "../../language/values/lots-when.ts";
import { thingsOf } from "../../session/context-of.ts";
import type { ReadKitchen } from "../../session/reading/read-kitchen.ts";
import { lotsNamed } from "./review-io.ts";

type JarOnRecord = LotOf & { jar: Jar };

/** The one jar, or why it is not one; `undefined` where the words are of no jar. */
export type JarFound = { ok: true; found: JarOnRecord } | { ok: false; message: string };

function contextIn({ state, nowMs }: Pick<ReadKitchen, "state" | "nowMs">): Context {
  return { ...thingsOf(state), recipes: [], nowMs: wallOf(state, nowMs), zone: state.zone };
}

const NUMBERED = /^(.+):([^:]*)$/;

/** The jar that words name, by themselves and with nothing beside; undefined where they do not. */
export function jarNamed(
  kitchen: Pick<ReadKitchen, "state" | "nowMs">,
  said: string,
): JarFound | undefined {
  const [, name, number] = NUMBERED.exec(said.trim()) ?? [];
  if (name !== undefined) {
    if (!/^0*[1-9]\d{0,2}$/.test(number ?? "")) {
      return {
        ok: false,
        message: `${JSON.stringify(said)} is no jar; write BATCH:3 for jar three`,
      };
    }
    const found = lotsNamed(kitchen.state, name, undefined, kitchen.nowMs);
    return found.ok ? only(found.lots, Number(number), said) : found;
  }
  const context = contextIn(kitchen);
  const when = lotsWhen(said, context);
  for (const [text, fits] of [
    ...(when ? [[when.text, when.fits] as const] : []),
    [said, () => true] as const,
  ] satisfies (readonly [string, LotsWhen["fits"]])[]) {
    const named = jarsNamed(text, context);
    const [jar, ...others] =
      named && /^jar \d\d$/.test(named.text.trim()) ? [...named.jars.values()] : [];
    if (!jar || others.length > 0) continue;
    const refs: Ref[] = jar.refs.filter(fits);
    return only(lotsOf(kitchen.state, refs), jar.number, said);
  }
  return undefined;
}

function only(lots: readonly LotOf[], number: number, said: string): JarFound {
  const found = lots.flatMap((one) => {
    return one.lot.jars.flatMap((jar) => (jar.number === number ? [{ ...one, jar }] : []));
  });
  const whole = found.filter(({ jar }) => jar.gone?.what !== "again");
  const [first, ...others] = whole.length > 0 ? whole : found;
  const asked = JSON.stringify(said);
  if (!first) {
    const ids = lots.map(({ lot }) => lot.id).join(", ");
    return { ok: false, message: `${asked}: ${ids} has no jar ${number}` };
  }
  if (others.length === 0) return { ok: true, found: first };
  const ids = [first, ...others].map(({ lot }) => `${lot.id}:${number}`).slice(-8);
  return { ok: false, message: `${asked} fits several jars; name one of ${ids.join(", ")}` };
}
