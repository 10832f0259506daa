import type { Intent } from "../../kitchen/command.ts";
import { abandon } from "./abandon.ts";
import { acknowledge } from "./acknowledge.ts";
import { added } from "./added.ts";
import { altitude } from "./altitude.ts";
import { answer } from "./answer.ts";
import { away } from "./away.ts";
import { back } from "./back.ts";
import { begin } from "./begin.ts";
import { boilLost } from "./boil-lost.ts";
import { boiling } from "./boiling.ts";
import { brewMade } from "./brew-made.ts";
import { brewOf } from "./brew-of.ts";
import { cannerState } from "./canner-state.ts";
import { changeBatch } from "./change-batch.ts";
import { coming } from "./coming.ts";
import { convert } from "./convert.ts";
import { correctTime } from "./correct-time.ts";
import { disposition } from "./disposition.ts";
import { done } from "./done.ts";
import { emergency } from "./emergency.ts";
import { explain } from "./explain.ts";
import { factor } from "./factor.ts";
import { finishTime } from "./finish-time.ts";
import { focus } from "./focus.ts";
import { forgetIt } from "./forget-it.ts";
import { forgetWords } from "./forget-words.ts";
import { gauge } from "./gauge.ts";
import { germination } from "./germination.ts";
import { given } from "./given.ts";
import { heap } from "./heap.ts";
import { help } from "./help.ts";
import { hold } from "./hold.ts";
import { howMuch } from "./how-much.ts";
import { hush } from "./hush.ts";
import { ingredients } from "./ingredients.ts";
import { instead } from "./instead.ts";
import { isSafe } from "./is-safe.ts";
import { jarBroken } from "./jar-broken.ts";
import { jarsFilled } from "./jars-filled.ts";
import { labeled } from "./labeled.ts";
import { learnedTimes } from "./learned-times.ts";
import { lidsMarked } from "./lids-marked.ts";
import { loaded } from "./loaded.ts";
import { looked } from "./looked.ts";
import { mayI } from "./may-i.ts";
import type { MeaningOf } from "./meaning.ts";
import { more } from "./more.ts";
import { no } from "./no.ts";
import { note } from "./note.ts";
import { opened } from "./opened.ts";
import { overview } from "./overview.ts";
import { ownWords } from "./own-words.ts";
import { pantry } from "./pantry.ts";
import { place } from "./place.ts";
import { plan } from "./plan.ts";
import { prefer } from "./prefer.ts";
import { pressure } from "./pressure.ts";
import { pressureLost } from "./pressure-lost.ts";
import { quit } from "./quit.ts";
import { readyWhen } from "./ready-when.ts";
import { recipes } from "./recipes.ts";
import { redo } from "./redo.ts";
import { remind } from "./remind.ts";
import { repeat } from "./repeat.ts";
import { resume } from "./resume.ts";
import { returned } from "./returned.ts";
import { sealFailed } from "./seal-failed.ts";
import { sealed } from "./sealed.ts";
import { seedSaved } from "./seed-saved.ts";
import { seeds } from "./seeds.ts";
import { setAside } from "./set-aside.ts";
import { settings } from "./settings.ts";
import { shortOf } from "./short-of.ts";
import { skip } from "./skip.ts";
import { spoiled } from "./spoiled.ts";
import { standing } from "./standing.ts";
import { taste } from "./taste.ts";
import { temperature } from "./temperature.ts";
import { timeLeft } from "./time-left.ts";
import { timerAdd } from "./timer-add.ts";
import { timerCancel } from "./timer-cancel.ts";
import { timerSet } from "./timer-set.ts";
import { toppedUp } from "./topped-up.ts";
import { trouble } from "./trouble.ts";
import { undo } from "./undo.ts";
import { unhush } from "./unhush.ts";
import { unknown } from "./unknown.ts";
import { venting } from "./venting.ts";
import { warnAhead } from "./warn-ahead.ts";
import { wasAway } from "./was-away.ts";
import { waterLow } from "./water-low.ts";
import { weightRocking } from "./weight-rocking.ts";
import { whatNext } from "./what-next.ts";
import { whatNow } from "./what-now.ts";
import { which } from "./which.ts";
import { whichJar } from "./which-jar.ts";
import { yes } from "./yes.ts";

/**
 * Everything a person can mean, in the order of preference: where two wordings fit equally well,
 * the meaning listed first here is taken.
 */
export const MEANINGS: { readonly [I in Intent]: MeaningOf<I> } = {
  emergency,
  settings,
  convert,
  "ready-when": readyWhen,
  seeds,
  "what-now": whatNow,
  "what-next": whatNext,
  "time-left": timeLeft,
  "finish-time": finishTime,
  overview,
  "how-much": howMuch,
  explain,
  trouble,
  "is-safe": isSafe,
  "may-i": mayI,
  "short-of": shortOf,
  "canner-state": cannerState,
  "which-jar": whichJar,
  which,
  pantry,
  ingredients,
  recipes,
  more,
  standing,
  coming,
  "own-words": ownWords,
  learned: learnedTimes,
  repeat,
  help,
  "forget-words": forgetWords,
  undo,
  redo,
  "forget-it": forgetIt,
  yes,
  no,
  acknowledge,
  boiling,
  "boil-lost": boilLost,
  gauge,
  pressure,
  "pressure-lost": pressureLost,
  "weight-rocking": weightRocking,
  venting,
  loaded,
  "water-low": waterLow,
  "was-away": wasAway,
  added,
  "topped-up": toppedUp,
  temperature,
  "jars-filled": jarsFilled,
  "brew-made": brewMade,
  "brew-of": brewOf,
  sealed,
  "seal-failed": sealFailed,
  "jar-broken": jarBroken,
  "set-aside": setAside,
  opened,
  returned,
  given,
  spoiled,
  taste,
  looked,
  done,
  altitude,
  heap,
  plan,
  begin,
  "change-batch": changeBatch,
  skip,
  away,
  back,
  "warn-ahead": warnAhead,
  quit,
  hold,
  resume,
  abandon,
  instead,
  focus,
  disposition,
  "timer-set": timerSet,
  "timer-add": timerAdd,
  "timer-cancel": timerCancel,
  remind,
  note,
  "correct-time": correctTime,
  hush,
  unhush,
  "lids-marked": lidsMarked,
  labeled,
  place,
  prefer,
  answer,
  factor,
  "seed-saved": seedSaved,
  germination,
  unknown,
};

/** The meanings with their names, in the order of preference. */
export function meanings(): [Intent, MeaningOf<Intent>][] {
  return Object.entries(MEANINGS) as [Intent, MeaningOf<Intent>][];
}

/** What a class of the model means, where its name is no meaning's, and the slots it fills. */
const LEARNED: ReadonlyMap<string, { intent: Intent; slots: object }> = new Map(
  meanings().flatMap(([intent, { learnedAs = {} }]) =>
    Object.entries(learnedAs).map(([name, slots]) => [name, { intent, slots }] as const),
  ),
);

/** The meaning that a class of the model stands for, and the slots it fills. */
export function learned(name: string): { intent: string; slots: object } {
  return LEARNED.get(name) ?? { intent: name, slots: {} };
}

/** Whether a name is that of a meaning. */
export function isIntent(name: string): name is Intent {
  return Object.hasOwn(MEANINGS, name);
}
