// data table
import { wordSet } from "./grammar/word-set.ts";

/**
 * Words that change nothing about the report they stand beside: whom it is told to, how it looks or
 * sounds, how the speaker feels about it. None may deny, doubt, wish, ask, order, quote somebody,
 * tell of another time, or say that something stops, falls or is missing.
 */
export const BESIDE: ReadonlySet<string> = wordSet(
  // Little words.
  "the a an my our this that these those it they them we i you us me she her there here of to at on",
  "in into from with and so oh ah aye well now then just really quite very right good is are am has",
  "have been do does as all both every each too also even",
  "yes yeah yep yup okay right hey look see listen hear there's here's",
  // Who is spoken to.
  "honey hon love dear dearie darling sugar sweetheart sweetie lass lassie lad hen pet duck pal mate",
  "buddy friend folks boss chief captain sir ma'am cher petal flower lovely lover gang team baby babe",
  "bud bro dude",
  // What is felt.
  "finally already still again today damn damned bloody blasted flaming goddamn hell heck crap shit",
  "bugger sod god lord heavens goodness mercy thank thanks thankfully hallelujah hooray amen bless",
  "golly gosh jeez wow yay yippee phew whew ha ooh cripes crikey blimey och happy happily glad pleased",
  "proud pretty beautiful lovely gorgeous grand great fine nice super splendid perfect brilliant",
  "champion cracking mighty bonny braw fair proper properly real true truly sure surely certainly",
  "definitely honest honestly indeed good-and bit little wee big old great huge tiny whole own poor",
  "daft silly stupid wretched precious blessed",
  // How it looks, sounds and goes.
  "steady steadily strong strongly hard fast full fully thick white solid loud loudly noisy lively",
  "straight constant constantly continuous gentle gently merrily merry furious furiously fierce",
  "fiercely wild wildly mad crazy vigorous vigorously even evenly smooth nicely neatly regular",
  "regularly along away round around across over top surface middle face front",
  "back everywhere hopping jumping leaping dancing going goes up out",
  "singing spitting splashing roaring thundering galloping clattering hissing whistling puffing",
  "chugging humming shimmying swaying twirling spinning birling jigging",
  // Things in a kitchen that hold nothing at stake.
  "stove hob burner ring counter kitchen towel board rack table window",
  "ears ear eyes eye hand hands finger fingers thumb heart soul life glasses",
);

/** A comparison says how, whatever it compares with: "steady as a sermon", "like the old trains". */
export const LIKENS: ReadonlySet<string> = wordSet("like as");
export const MOST_LIKENED = 4;
