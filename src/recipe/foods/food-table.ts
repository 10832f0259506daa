// data table
/**
 * What a garden, an orchard, a market or a hunt brings into a kitchen, one food a line:
 *
 *   name | kind | acidity | basis | other names, all in the singular
 *
 * Acidity: `acid`, every printed reading is 4.6 or below, or a published boiling-water process
 * takes the food without added acid; `by-process`, readings pass 4.6 and only its own published
 * process makes it acid enough; `crosses`, readings pass 4.6 with variety or ripeness; `low`;
 * `-`, no publication was read. All but the first two count as low in acid.
 *
 * Basis: `FDA` Approximate pH of Foods and Food Products, 2003, with its range; `BBB` pH values
 * in the FDA's Bad Bug Book; `G1` to `G7` the USDA Complete Guide to Home Canning by guide;
 * `NCHFP` National Center for Home Food Preservation; `UWEX` University of Wisconsin Extension,
 * 2020; `KSRE` Kansas State Research and Extension, 2022, which names fruits not to be canned as
 * purees; `ARS` USDA Agricultural Research Service, pH of Selected Foods; `UC` UC Master Food
 * Preservers; `practice` common knowledge of growers and cooks; `memory` neither read nor checked.
 * `acid` and `by-process` never rest on the last two. Which name belongs to which food is
 * gardeners' common knowledge throughout.
 */
export const FOOD_TABLE = `
seasoning | no food | - | practice | celery seed, mustard seed, dill seed, coriander seed, fennel seed, caraway seed, caraway, anise seed, anise, cumin seed, poppy seed, nigella seed, celery salt, garlic salt, onion salt, garlic powder, onion powder, mushroom powder, dried mushroom powder, tomato powder, mustard powder, dry mustard, ground mustard, chile powder, chili powder, pepper flake, hot pepper flake, red pepper flake, chile flake, chili flake, ground pepper, black pepper, white pepper, cracked pepper, cayenne pepper, ground cayenne, ground red pepper, dried pepper, dried red pepper, dried chile, dried chili, dried red chile, peppercorn, allspice, allspice berry, juniper berry, clove, whole clove, cinnamon, cinnamon stick, nutmeg, mace, star anise, cardamom, cumin, turmeric, ground turmeric, ground ginger, paprika, saffron, sumac powder, pickling spice, pumpkin pie spice, pie spice, pumpkin spice, mustard, prepared mustard, curry powder, juniper, mixed pickling spice, bay leaf, vanilla bean, vanilla, cream of tartar, lemon zest, orange zest, lemon peel, orange peel, lemon juice, lime juice, lemon or lime juice, bottled lemon juice, bottled lime juice, corn syrup, celery leaf, grape leaf, cherry leaf, currant leaf, oak leaf, raspberry leaf, bone taken out, bone removed, bone out, lemon balm, lemon thyme, lemon verbena, dried celery, dried onion, dried garlic, dried dill, dried oregano, dried basil, fat, bay, mint, pickling lime, hydrated lime, slaked lime, food grade lime, pea-sized, fish sauce, lemon extract, almond extract
herb | herb | - | practice | basil, sweet basil, thai basil, oregano, marjoram, thyme, rosemary, sage, parsley, cilantro, coriander leaf, dill, dill weed, dill head, dillweed, tarragon, chervil, savory, summer savory, winter savory, spearmint, peppermint, fresh mint, lavender, hyssop, borage, lovage, epazote, lemongrass, fennel, fennel frond, curry leaf, shiso, perilla, sorrel leaf, chamomile, calendula, rose petal, violet flower, elderflower, nasturtium, hibiscus, roselle
water | water | - | practice | ice
broth | broth | low | G5 | stock, bouillon, meat juice, dripping, bone broth

bean | vegetable | low | FDA 5.60 | snap bean, green bean, wax bean, yellow bean, string bean, runner bean, pole bean, bush bean, french bean, filet bean, haricot vert, haricot, italian bean, romano bean, romano, roma bean, purple bean, purple podded bean, dragon tongue, dragon tongue bean, blue lake, blue lake bean, yardlong bean, long bean, rattlesnake bean, kentucky wonder, provider bean
lima bean | vegetable | low | FDA 6.50 | lima, butter bean, butterbean, fresh lima bean, baby lima
shell bean | vegetable | low | FDA 6.50 | fava bean, fava, broad bean, edamame, soybean, soya bean, soy bean, shelling bean, shelled bean, october bean, horticultural bean, fresh shelled bean
dry bean | vegetable | low | FDA 5.60-6.50 | dried bean, dried bean or pea, dry bean or pea, pinto bean, dried pinto bean, black bean, turtle bean, navy bean, kidney bean, pinto, white bean, great northern bean, great northern, cannellini, cannellini bean, garbanzo, garbanzo bean, chickpea, chick pea, lentil, split pea, dried pea, dry pea, black-eyed pea, blackeyed pea, cowpea, southern pea, field pea, crowder pea, mung bean, bean soaked, soaked bean, red bean, pink bean, tepary bean, soldier bean, lupin, adzuki bean, azuki bean, adzuki, cranberry bean, borlotti bean, borlotti, jacob's cattle bean, anasazi bean, yellow eye bean, dried kidney bean, dried navy bean, dry pinto bean, dried black bean, dry black bean, dry kidney bean, dry navy bean, dried lima bean, dry lima bean, dried white bean
refried bean | vegetable | low | practice | refried, bean paste, hummus, mashed bean, bean puree, bean dip
baked bean | vegetable | low | FDA 5.10-5.80 | pork and bean, bean in sauce
pea | vegetable | low | BBB 5.8-7.0 | shelled pea, garden pea, english pea, green pea, shelling pea, sweet pea, petit pois
edible-pod pea | vegetable | low | practice | snow pea, snap pea, sugar snap, sugar snap pea, sugar pea, mangetout, mange tout
corn | vegetable | low | FDA 5.90-7.50 | sweet corn, sweetcorn, corn kernel, maize, corn on the cob, ear of corn, silver queen, cut corn, whole kernel corn, whole-kernel sweet corn
cream-style corn | vegetable | low | G4 | cream corn, creamed corn, cream style corn, cream-style sweet corn, corn cream style
hominy | vegetable | low | BBB 6.0 | nixtamal, posole, pozole, field corn, dent corn, popcorn, flint corn
baby corn | vegetable | low | FDA 5.20 | baby sweet corn
carrot | vegetable | low | FDA 5.88-6.40 | baby carrot, nantes carrot, chantenay carrot, purple carrot, rainbow carrot, danvers carrot
carrot juice | vegetable | low | BBB 6.4 | carrot puree
beet | vegetable | low | FDA 5.30-6.60 | beetroot, chioggia, chioggia beet, golden beet, red beet, detroit beet, baby beet, bull's blood, cylindra, sugar beet, albina beet, burpee's golden beet
asparagus | vegetable | low | FDA 6.00-6.70 | asparagus spear, asparagus tip
okra | vegetable | low | BBB 5.5-6.4 | okra pod, lady's finger, ladies' finger, gumbo, bhindi
greens | vegetable | low | BBB 5.5-6.8 | spinach, kale, chard, swiss chard, rainbow chard, silverbeet, collard, collard greens, mustard greens, turnip greens, beet greens, beet top, dandelion greens, amaranth leaf, nettle, stinging nettle, lamb's quarter, bok choy, pak choi, tatsoi, komatsuna, mizuna, orach, malabar spinach, new zealand spinach, callaloo, purslane, gai lan, chinese broccoli, choy sum, water spinach, mustard spinach, kalette
salad leaf | vegetable | low | BBB 5.8-6.0 | lettuce, arugula, rocket, watercress, cress, endive, escarole, radicchio, chicory, frisee, mache, salad, celtuce
mushroom | vegetable | low | FDA 6.00-6.70 | button mushroom, white mushroom, crimini, cremini, portobello, portabella, champignon
wild mushroom | vegetable | low | practice | chanterelle, morel, porcini, bolete, truffle, puffball, chicken of the woods, hen of the woods, maitake, shiitake, shiitake mushroom, oyster mushroom, enoki, lion's mane, king boletus
potato | vegetable | low | FDA 5.40-5.90 | white potato, irish potato, red potato, russet, russet potato, yukon gold, new potato, fingerling, fingerling potato, spud
mashed potato | vegetable | low | practice | potato puree, mashed sweet potato, sweet potato puree, sweet potato butter
sweet potato | vegetable | low | BBB 5.3-5.6 | sweetpotato, kumara, garnet yam
tropical root | vegetable | low | practice | yam, cassava, yuca, manioc, taro, dasheen, eddo, jicama, lotus root, malanga, oca, yacon, arrowroot tuber, arrowhead tuber, ulluco, mashua, konjac
sunchoke | vegetable | low | FDA 5.93-6.00 | jerusalem artichoke, sunroot, crosne
summer squash | vegetable | low | BBB 5.5-6.0 | squash, zucchini, yellow squash, courgette, crookneck, crookneck squash, straightneck squash, pattypan, pattypan squash, patty pan, scallop squash, cousa squash, marrow, tromboncino, golden zucchini, yellow zucchini
winter squash | vegetable | low | BBB 5.0-6.2 | butternut, butternut squash, acorn squash, hubbard, hubbard squash, delicata, delicata squash, kabocha, kabocha squash, buttercup squash, banana squash, red kuri, kuri squash, turban squash, dumpling squash, carnival squash, honeynut, cushaw, crown prince squash
spaghetti squash | vegetable | low | practice | vegetable spaghetti
pumpkin | vegetable | low | FDA 4.99-5.50 | pie pumpkin, sugar pumpkin, cheese pumpkin, pumpkin cube
pumpkin puree | vegetable | low | NCHFP | pumpkin butter, mashed pumpkin, mashed squash, squash puree, squash butter, pumpkin pie filling, pureed pumpkin, pureed squash, winter squash puree, butternut puree, butternut squash puree, butternut squash soup base, pumpkin mash
gourd | vegetable | low | practice | bitter melon, bitter gourd, luffa, loofah, bottle gourd, ridge gourd, winter melon, wax gourd, ash gourd, chayote, mirliton, cucuzza, opo, snake gourd, calabash, tinda
cucumber | vegetable | low | FDA 5.12-5.78 | lemon cucumber, apple cucumber, gherkin, cornichon, cuke, kirby, pickle, pickling cucumber, slicing cucumber, english cucumber, burpless cucumber, persian cucumber, armenian cucumber, boston pickling, national pickling, marketmore, parisian gherkin, crystal apple
cabbage | vegetable | low | FDA 5.20-6.80 | sauerkraut, kraut, green cabbage, white cabbage, red cabbage, savoy cabbage, savoy, cabbage head
napa cabbage | vegetable | low | practice | napa, chinese cabbage, kimchi, kimchee, baechu
brussels sprout | vegetable | low | FDA 6.00-6.30 | brussel sprout, brussels
cauliflower | vegetable | low | FDA 5.60 | romanesco, cauliflower floret
broccoli | vegetable | low | FDA 6.30-6.85 | broccoli floret, broccoli raab, broccoli rabe, rapini, broccolini
kohlrabi | vegetable | low | BBB 5.7-5.8 |
turnip | vegetable | low | BBB 5.2-5.5 | rutabaga, swede, neep
parsnip | vegetable | low | BBB 5.3 | salsify, scorzonera, parsley root, burdock, gobo, skirret, chervil root, hamburg parsley
radish | vegetable | low | BBB 5.5-6.5 | daikon, watermelon radish, black radish, white radish, mooli
artichoke | vegetable | low | FDA 5.50-6.00 | globe artichoke, artichoke heart, cardoon
eggplant | vegetable | low | FDA 4.50-5.30 | aubergine, brinjal
fennel bulb | vegetable | low | practice | florence fennel, finocchio
fiddlehead | vegetable | low | practice | ostrich fern, fern shoot
bamboo shoot | vegetable | low | FDA 5.10-6.20 |
water chestnut | vegetable | low | practice |
olive | vegetable | low | BBB 6.0-6.5 | black olive, green olive, ripe olive
avocado | vegetable | low | FDA 6.27-6.58 | guacamole
sprout | vegetable | low | practice | bean sprout, alfalfa sprout, microgreen
cactus | vegetable | crosses | FDA 4.70 | nopal, nopales, cactus pad, prickly pear pad
horseradish | vegetable | low | FDA 5.35 | horseradish root, wasabi
ginger | vegetable | low | practice | ginger root, fresh ginger, galangal, turmeric root, fresh turmeric
heart of palm | vegetable | low | practice | palm heart
seaweed | vegetable | low | practice | kelp, nori, dulse, wakame, kombu, samphire, sea bean, glasswort
caper | vegetable | crosses | practice | nasturtium pod, nasturtium seed
nut | vegetable | low | practice | peanut, boiled peanut, green peanut, chestnut, almond, walnut, pecan, hazelnut, filbert, cashew, pistachio, pine nut, macadamia, acorn, hickory nut, brazil nut, peanut butter, nut butter, sunflower seed, pumpkin seed, pepita, sesame
tofu | vegetable | low | practice | tempeh, seitan, bean curd, miso, natto
pesto | vegetable | low | practice | basil pesto, green sauce in oil
vegetable | vegetable | low | G1 | mixed vegetable, garden vegetable, veggie, giardiniera, chow-chow, succotash
pepper | vegetable | low | BBB 5.15 | chile, chili, chilli, chile pepper, chili pepper, jalapeno, jalapeño, jalapeno pepper, habanero, scotch bonnet, serrano, poblano, pasilla, anaheim, cayenne, tabasco pepper, ghost pepper, thai pepper, bird chile, fresno, pimento, pimiento, paprika pepper, ancho, banana pepper, cherry pepper, hungarian wax, wax pepper, lemon drop pepper, cubanelle, bell pepper, sweet pepper, hot pepper, green pepper, red pepper, yellow pepper, orange pepper, padron, shishito, pepperoncini, capsicum, sandia, big jim, hatch, hatch chile, aji, datil, rocoto
onion | vegetable | low | BBB 5.3-5.8 | yellow onion, white onion, red onion, sweet onion, vidalia, walla walla, pearl onion, boiling onion, cipollini, shallot, scallion, spring onion, green onion, bunching onion
leek | vegetable | low | FDA 5.50-6.17 | ramp, wild ramp, wild leek, wild garlic, ramson, chive
oil mix | oil | low | NCHFP | garlic oil, garlic in oil, herb oil, herb in oil, infused oil, pepper in oil, chile oil, chili oil, basil in oil, rosemary oil, dried tomato in oil, vegetable in oil, mushroom in oil
garlic | vegetable | low | practice | garlic clove, clove of garlic, elephant garlic, garlic head, garlic bulb, black garlic
garlic scape | vegetable | low | practice | scape, garlic stem
celery | vegetable | low | FDA 5.70-6.00 | celery stalk, celery rib
celeriac | vegetable | low | practice | celery root

tomato | vegetable | by-process | G1, G3 with acid in every jar; varieties pass 4.6 | roma, roma tomato, san marzano, plum tomato, paste tomato, cherry tomato, grape tomato, pear tomato, yellow pear tomato, red pear tomato, currant tomato, peach tomato, banana tomato, lemon tomato, pineapple tomato, strawberry tomato, brandywine, amish paste, early girl, better boy, beefsteak, beefsteak tomato, oxheart, mortgage lifter, cherokee purple, sungold, sun gold, black krim, juliet, green zebra, celebrity tomato, green tomato, heirloom tomato, yellow tomato, orange tomato, white tomato, slicing tomato, passata, tomato sauce, tomato puree, tomato paste, ketchup, catsup
tomato juice | vegetable | by-process | G3 with acid in every jar | juice from tomato, tomato vegetable juice, tomato and vegetable juice, vegetable juice
dried tomato | vegetable | crosses | practice | sun-dried tomato, sundried tomato, tomato in oil
tomatillo | vegetable | by-process | G3 with acid in every jar | husk tomato
ground cherry | fruit | - | memory | cape gooseberry, husk cherry, goldenberry, golden berry, physalis

rhubarb | fruit | acid | G2; BBB 3.1-3.4 | rhubarb stalk, pie plant
rhubarb leaf | poison | - | practice |
apple | fruit | acid | G2; FDA 3.30-4.00 | cider, apple cider, sweet cider, apple juice, applesauce, apple sauce, apple butter, granny smith, mcintosh, honeycrisp, gala, gala apple, fuji, fuji apple, jonathan, jonagold, gravenstein, cortland, winesap, rome beauty, northern spy, empire apple, golden delicious, red delicious, braeburn, pink lady, pippin, transparent apple, winter banana apple, cooking apple, eating apple, apple slice, apple ring
crabapple | fruit | acid | G2, G7 | crab apple, crab-apple
pear | fruit | acid | G2 | bartlett, bartlett pear, bosc, bosc pear, anjou, anjou pear, comice, comice pear, kieffer, kieffer pear, seckel, seckel pear, clapp's favorite, moonglow pear, orient pear, european pear, pear half
Asian pear | fruit | crosses | NCHFP: acid in every jar, 4.6 and above by variety | asian ripe pear, nashi, nashi pear, apple pear, sand pear, chinese pear, japanese pear, korean pear, shinseiki, hosui, kosui, oriental pear
peach | fruit | acid | G2 | yellow peach, yellow-flesh peach, freestone peach, clingstone peach, freestone, clingstone, redhaven, red haven, elberta, elberta peach, o'henry peach, peach half, peach slice
white peach | fruit | crosses | NCHFP, UWEX: can pass 4.6, no process with or without acid | white-fleshed peach, white flesh peach, white-flesh peach, white donut peach, donut peach, saturn peach, doughnut peach, flat peach, peento, babcock peach, belle of georgia, arctic supreme, white lady peach, indian blood peach
apricot | fruit | by-process | G2; FDA 3.30-4.80 | apricot half, royal apricot, blenheim, blenheim apricot
nectarine | fruit | acid | G2; FDA 3.92-4.18 | yellow nectarine
white nectarine | fruit | crosses | UWEX: can pass 4.6 | white-fleshed nectarine, white flesh nectarine, white-flesh nectarine, arctic rose nectarine
plum | fruit | acid | G2 | prune, prune plum, damson, damson plum, greengage, green gage, gage, italian plum, italian prune, santa rosa plum, stanley plum, satsuma plum, mirabelle, yellow plum, blue plum, red plum, beach plum, sand plum, wild plum, chickasaw plum, cherry plum
pluot | fruit | - | memory | plumcot, aprium, pluerry
cherry | fruit | acid | G2; FDA 3.25-4.54 | sweet cherry, sour cherry, tart cherry, pie cherry, bing cherry, bing, rainier cherry, royal ann, royal ann cherry, montmorency, montmorency cherry, black cherry, lapins
wild cherry | fruit | - | memory | chokecherry, choke cherry, sand cherry, nanking cherry, pin cherry, cornelian cherry, surinam cherry
grape | fruit | acid | G2; FDA 2.80-3.82 | concord, concord grape, niagara, niagara grape, seedless grape, table grape, thompson grape, muscadine, scuppernong, wine grape, grape juice, catawba
cranberry | fruit | acid | NCHFP | cranberry juice
highbush cranberry | fruit | - | memory | viburnum berry
berry | fruit | acid | G2 | mixed berry, wild berry, bramble
strawberry | fruit | acid | G7 | everbearing strawberry, alpine strawberry, wild strawberry, june-bearing strawberry
raspberry | fruit | acid | G2 | red raspberry, black raspberry, blackcap, golden raspberry, yellow raspberry, purple raspberry
blackberry | fruit | acid | G2; FDA 3.85-4.50 | marionberry, olallieberry, himalayan blackberry, thornless blackberry
boysenberry | fruit | acid | G7 |
blueberry | fruit | acid | G2; FDA 3.11-3.33 | highbush blueberry, lowbush blueberry, wild blueberry
gooseberry | fruit | acid | G2 | green gooseberry, red gooseberry
dewberry | fruit | acid | G2 |
loganberry | fruit | acid | G2; FDA 2.70-3.50 |
youngberry | fruit | acid | G7 |
tayberry | fruit | - | memory |
jostaberry | fruit | - | memory |
huckleberry | fruit | acid | G2 | mountain huckleberry, black huckleberry, red huckleberry
garden huckleberry | fruit | - | practice | sunberry, wonderberry
currant | fruit | acid | G2 | red currant, redcurrant, black currant, blackcurrant, white currant, whitecurrant, pink currant
mulberry | fruit | crosses | G2 lists it; 3.4-5.6 by variety in a later compilation | black mulberry, white mulberry, red mulberry
elderberry | fruit | crosses | UWEX; University of Minnesota, mean 4.8 | black elderberry, american elderberry, blue elderberry, elder, sambucus, elderberry juice, elderberry syrup
saskatoon | fruit | - | memory | serviceberry, juneberry, service berry, saskatoon berry, shadbush berry
aronia | fruit | - | memory | chokeberry, aronia berry
honeyberry | fruit | - | memory | haskap, haskap berry, blue honeysuckle berry
lingonberry | fruit | - | memory | cowberry
bilberry | fruit | - | memory | whortleberry
cloudberry | fruit | - | memory | salmonberry, thimbleberry, wineberry
sea buckthorn | fruit | - | memory | seaberry, buffaloberry, autumn olive, goumi
goji | fruit | - | memory | goji berry, wolfberry
hawthorn | fruit | - | memory | haw, hawthorn berry, mayhaw
rose hip | fruit | - | memory | rosehip, hip
rowan | fruit | - | memory | rowan berry, mountain ash berry
oregon grape | fruit | - | memory | mahonia, mahonia berry, barberry
salal | fruit | - | memory | salal berry, manzanita berry, sumac berry, staghorn sumac
quince | fruit | acid | ARS 3.12-3.63 | flowering quince, japanese quince
medlar | fruit | - | memory |
persimmon | fruit | crosses | KSRE, UC | fuyu, fuyu persimmon, hachiya, hachiya persimmon, kaki, american persimmon
pomegranate | fruit | acid | FDA 2.93-3.20 | pomegranate seed, pomegranate juice
prickly pear | fruit | - | memory | cactus pear, tuna fruit, cactus fruit
fig | fruit | crosses | G1: slightly above 4.6, acid in every jar; FDA 5.05-5.98 | mission fig, black mission fig, brown turkey fig, celeste fig, calimyrna, kadota fig, adriatic fig
banana | fruit | low | KSRE; FDA 4.50-5.20 | banana puree, mashed banana, plantain, red banana
mango | fruit | crosses | NCHFP: not as puree; FDA ripe 5.80-6.00 | ripe mango, green mango, unripe mango
papaya | fruit | low | NCHFP | green papaya, pawpaw, paw paw
melon | fruit | low | NCHFP | cantaloupe, canteloupe, cantelope, cantaloup, muskmelon, rockmelon, honeydew, honey dew, honeydew melon, casaba, crenshaw, crenshaw melon, canary melon, persian melon, galia, charentais, santa claus melon, kiwano
watermelon | fruit | low | NCHFP | sugar baby, watermelon flesh
watermelon rind | fruit | low | practice | melon rind, cantaloupe rind
coconut | fruit | low | NCHFP | coconut milk, coconut cream, coconut meat, shredded coconut
date | fruit | crosses | KSRE | medjool, medjool date, deglet noor, jujube
pineapple | fruit | crosses | UC: not ripe pineapple | pineapple ring, pineapple chunk
lemon | fruit | acid | FDA 2.00-2.60 | lemon slice, lemon pulp, eureka lemon
lime fruit | fruit | acid | FDA 2.00-2.80 | persian lime, key lime, fresh lime, lime slice, lime wedge
grapefruit | fruit | acid | FDA 3.00-3.75 | pink grapefruit, white grapefruit
orange | fruit | acid | ARS juice 3.53-4.20 | orange pulp, navel orange, valencia orange, orange segment, orange slice, orange juice
other citrus | fruit | - | memory | meyer lemon, mandarin, tangerine, clementine, satsuma mandarin, kumquat, calamondin, yuzu, pomelo, tangelo, citron, bergamot, blood orange, seville orange, citrus fruit
kiwi | fruit | - | memory | kiwifruit, kiwi berry, hardy kiwi
guava | fruit | - | memory | feijoa, pineapple guava, strawberry guava
tropical fruit | fruit | - | memory | passion fruit, passionfruit, dragon fruit, pitaya, jackfruit, breadfruit, lychee, litchi, longan, rambutan, star fruit, starfruit, carambola, tamarind, soursop, guanabana, cherimoya, custard apple, sapote, mamey, durian, mangosteen, loquat, tamarillo, tree tomato, pepino, ackee, acerola, noni
raisin | fruit | - | memory | dried fruit, dried cranberry, dried apricot, dried apple, dried fig, dried cherry, dried currant, sultana
fruit cocktail | fruit | acid | FDA 3.60-4.00 | mixed fruit, fruit salad
fruit | fruit | - | practice | garden fruit

meat | any meat | low | G5 | beef, pork, lamb, veal, venison, deer, bear, elk, moose, goat, mutton, bison, buffalo, antelope, pronghorn, caribou, wild boar, game, steak, brisket, roast beef, stew meat, chuck roast, pot roast, pork loin, pork shoulder, pork butt, beef cube, beef chunk, short rib
ground meat | any meat | low | G5 | ground beef, ground pork, ground venison, ground lamb, ground veal, ground elk, ground turkey, ground chicken, ground moose, ground fresh chilled meat, minced meat, mince, minced beef, hamburger, burger, sausage, breakfast sausage, bratwurst, chopped meat, ground bear, meatball, taco meat
cured meat | other animal food | low | practice | ham, bacon, corned beef, pastrami, chorizo, salami, pepperoni, jerky, smoked sausage, hot dog, liver, pate, giblet, kidney, tongue, heart meat, offal, blood sausage, prosciutto, pancetta, guanciale, ham hock, kielbasa, andouille, bologna, scrapple, head cheese, bacon bit
mincemeat | other animal food | low | practice |
chicken | poultry | low | G5 | hen, rooster, poultry, chicken breast, chicken thigh, chicken leg, broiler, fryer
rabbit | poultry | low | G5 | hare
other bird | poultry | low | practice | turkey, duck, goose, quail, pheasant, grouse, partridge, dove, guinea fowl, squab, ostrich, emu, cornish hen
bone | bone | low | G5 | beef bone, pork bone, chicken bone, turkey bone, veal bone, lamb bone, meat bone, soup bone, marrow bone, venison bone, carcass, chicken carcass, turkey carcass, chicken back, chicken neck, chicken foot
fish | any fish | low | G5 | salmon, trout, steelhead, mackerel, bluefish, whitefish, shad, herring, sockeye, coho, king salmon, pink salmon, chinook, rainbow trout, lake trout, brook trout, kokanee, mullet
lean fish | any fish | low | practice | cod, haddock, halibut, flounder, sole fillet, bass, striped bass, perch, walleye, pike, northern pike, panfish, crappie, bluegill, catfish, carp, tilapia, snapper, rockfish, lingcod, sturgeon, eel, pollock, sucker, grouper, hake, monkfish, mahi mahi, sea bass, zander
seafood | any fish | low | practice | tuna, albacore, shrimp, prawn, clam, crab, oyster, lobster, crawfish, crayfish, mussel, scallop, squid, calamari, octopus, abalone, conch, snail, smoked fish, smoked salmon, smoked trout, lox, anchovy, sardine, smelt, caviar, roe, fish roe, turtle, frog leg, alligator, swordfish, cockle, whelk, langoustine
egg or milk | other animal food | low | practice | egg, hard-boiled egg, pickled egg, quail egg, milk, goat milk, cream, heavy cream, cheese, cream cheese, yogurt, yoghurt, buttermilk, sour cream, half and half, ghee, custard, whey, mozzarella, cheddar, parmesan, feta, ricotta, mascarpone, paneer, hollandaise, mayonnaise, bechamel

poisonous plant | poison | - | practice | deadly nightshade, nightshade berry, pokeweed, poke berry, pokeberry, poke sallet, yew berry, holly berry, baneberry, water hemlock, wild carrot, wild parsnip, mayapple, lily of the valley, foxglove, milkweed pod
`;
