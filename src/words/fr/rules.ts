import type { Phrases } from "../phrases.ts";

/** Published rules, what contradicts them, and notes on conditioners. */
export const RULES: Phrases = {
  "No ammonium salt with dicamba: it sets dicamba acid free to evaporate. It blocks unless the job says no volatility rules apply.":
    "Pas de sel d'ammonium avec le dicamba : il libère l'acide dicamba, qui s'évapore. Bloquant, sauf si le dossier dit qu'aucune règle de volatilité ne vaut.",
  "Zollinger and others show ammonium sulfate restoring dicamba in hard water where the label allows it.":
    "Zollinger et autres : le sulfate d'ammonium rétablit le dicamba en eau dure, là où l'étiquette le permet.",
  "Ammonium salts raise dicamba vapour loss. Some older labels allow them: read the label in hand.":
    "Les sels d'ammonium accroissent la perte de dicamba en vapeur. Des étiquettes anciennes les permettent : lire celle en main.",
  "Do not acidify dicamba: below pH 5 vapour loss and off-target movement rise.":
    "Ne pas acidifier le dicamba : sous pH 5, perte en vapeur et transport hors cible augmentent.",
  "The tank is below pH 5, where dicamba vapour loss rises. Some labels ask for an agent that raises the pH.":
    "La cuve est sous pH 5, où la perte de dicamba en vapeur augmente. Certaines étiquettes demandent un agent qui relève le pH.",
  "Glyphosate salts pull a dicamba tank down by 1 to 2 pH units.":
    "Les sels de glyphosate abaissent une cuve de dicamba de 1 à 2 unités pH.",
  "Registrants state 0.2 to 0.3 units, as reported in the same paper.":
    "Les détenteurs d'homologation disent 0,2 à 0,3 unité, selon le même article.",
  "Glufosinate raises dicamba vapour loss and is no labelled partner for it in tolerant crops.":
    "Le glufosinate accroît la perte de dicamba en vapeur ; pas un partenaire d'étiquette en cultures tolérantes.",
  "From about 400 mg/L hardness dicamba with glyphosate lost control of some weeds.":
    "Dès environ 400 mg/L de dureté, le dicamba avec glyphosate a perdu en efficacité sur certaines adventices.",
  "Roskamp and others (2013): cations did not move dicamba on horseweed.":
    "Roskamp et autres (2013) : cations sans effet sur le dicamba, vergerette du Canada.",
  "No acidifier with sulfonylureas: they dissolve poorly in acid water and break down on standing.":
    "Pas d'acidifiant avec les sulfonylurées : elles se dissolvent mal en eau acide et se dégradent au repos.",
  "General advice that pH 4 to 6 suits everything.": "Le conseil général que pH 4 à 6 convient à tout.",
  "This tank is acid for a sulfonylurea: disperse it in plain water first and spray at once. The limit of pH 5.5 is ours.":
    "Cuve acide pour une sulfonylurée : la disperser d'abord en eau seule et pulvériser aussitôt. Notre limite : pH 5,5.",
  "Sulfonylureas break down in acid water: spray the same day.":
    "Les sulfonylurées se dégradent en eau acide : pulvériser le jour même.",
  "Unlike its relatives rimsulfuron breaks down in alkaline water too: keep the tank near pH 6 to 7.":
    "Contrairement à ses parents, le rimsulfuron se dégrade aussi en eau alcaline : garder la cuve vers pH 6 à 7.",
  "No acidifier with saflufenacil: it does not dissolve. Control at pH 4 was up to 56 % lower than at pH 7.7.":
    "Pas d'acidifiant avec le saflufénacil : il ne se dissout pas. À pH 4, l'efficacité était jusqu'à 56 % plus basse qu'à pH 7,7.",
  "This tank is acid for saflufenacil, which dissolves poorly. The limit of pH 5 is ours; the trial saw the loss at pH 4.":
    "Cuve acide pour le saflufénacil, qui se dissout mal. Notre limite : pH 5 ; l'essai a vu la perte à pH 4.",
  "Hardness up to 620 mg/L made no difference to saflufenacil: no conditioner needed for it.":
    "Une dureté jusqu'à 620 mg/L n'a rien changé au saflufénacil : pas besoin de correcteur pour lui.",
  "No acid with fixed copper: acid sets copper free and burns leaves.":
    "Pas d'acide avec le cuivre fixe : l'acide libère le cuivre et brûle les feuilles.",
  "Keep fixed copper at pH 6.5 or above: labels usually say so.":
    "Garder le cuivre fixe à pH 6,5 ou plus : les étiquettes le disent d'ordinaire.",
  "Chelants and ammonium dissolve fixed copper: leaf injury, and the conditioner is used up.":
    "Chélatants et ammonium dissolvent le cuivre fixe : dégâts aux feuilles, et le correcteur est consommé.",
  "Surfactants, silicones above all, carry copper into the leaf: more injury.":
    "Les tensioactifs, surtout siliconés, font entrer le cuivre dans la feuille : plus de dégâts.",
  "Strong acid throws the herbicide acid out of amine and salt mixes as crystals. Dilute both first, jar test.":
    "L'acide fort précipite en cristaux l'acide herbicide des mélanges d'amines et de sels. Diluer d'abord les deux, essai au bocal.",
  "Low pH alone did not raise glyphosate activity. About 1 % v/v of product was needed to match ammonium sulfate in 1,000 mg/L water.":
    "Un pH bas seul n'a pas renforcé l'effet du glyphosate. Il fallait environ 1 % v/v de produit pour égaler le sulfate d'ammonium en eau à 1000 mg/L.",
  "Guides advise lowering water above pH 8.5. Hardness is usually the larger fault: see the computed shares.":
    "Des guides conseillent d'abaisser une eau au-dessus de pH 8,5. La dureté est d'ordinaire le plus gros défaut : voir les parts calculées.",
  "From 350 mg/L hardness tie-up shows at low rates (about 445 g/ha). The same source calls 890 g/ha a high rate.":
    "Dès 350 mg/L de dureté, le blocage se voit aux doses faibles (environ 445 g/ha). La même source appelle 890 g/ha une dose forte.",
  "150 (Montana), 200 (turf guide), 300 mg/L (canola guide).":
    "150 (Montana), 200 (guide de gazon), 300 mg/L (guide du canola).",
  "From 700 mg/L hardness do not spray glyphosate unconditioned, even at high rates.":
    "Dès 700 mg/L de dureté, ne pas pulvériser de glyphosate sans correcteur, même à forte dose.",
  "Some field trials saw no loss; rate, volume and species decide.":
    "Certains essais au champ n'ont vu aucune perte ; dose, volume et espèce décident.",
  "Above 300 mg/L hardness a canola guide asks for ammonium sulfate before weak-acid herbicides.":
    "Au-dessus de 300 mg/L de dureté, un guide du canola demande du sulfate d'ammonium avant les herbicides acides faibles.",
  "Other lines for the same water: 150, 200, 350 and 700 mg/L.":
    "Autres seuils pour la même eau : 150, 200, 350 et 700 mg/L.",
  "Montana draws its line at 150 mg/L hardness, more so above pH 7.":
    "Le Montana met son seuil à 150 mg/L de dureté, d'autant plus au-dessus de pH 7.",
  "Other lines for the same water: 200, 300, 350 and 700 mg/L.":
    "Autres seuils pour la même eau : 200, 300, 350 et 700 mg/L.",
  "North Dakota calls 150 mg/L calcium antagonistic to weak-acid herbicides.":
    "Le Dakota du Nord dit 150 mg/L de calcium antagonistes des herbicides acides faibles.",
  "From 300 mg/L sodium weak-acid herbicides are antagonised. No equilibrium of the tank shows it.":
    "Dès 300 mg/L de sodium, les herbicides acides faibles sont antagonisés. Aucun équilibre de la cuve ne le montre.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened glyphosate in pots; ammonium nitrate brought it back.":
    "En pots, 600 mg/L de bicarbonate de sodium (436 mg/L en bicarbonate) ont affaibli le glyphosate. Le nitrate d'ammonium l'a rétabli.",
  "Sodium bicarbonate at 600 mg/L (436 mg/L as bicarbonate) weakened nicosulfuron in pots; ammonium nitrate brought it back.":
    "En pots, 600 mg/L de bicarbonate de sodium (436 mg/L en bicarbonate) ont affaibli le nicosulfuron. Le nitrate d'ammonium l'a rétabli.",
  "Dissolved iron holds glyphosate hard: full ammonium sulfate rate, an iron sequestrant, or other water. The limit of 1 mg/L is ours.":
    "Le fer dissous retient fort le glyphosate : pleine dose de sulfate d'ammonium, séquestrant du fer ou autre eau. Notre limite : 1 mg/L.",
  "A provincial specialist says no additive corrects iron.":
    "Un spécialiste provincial dit qu'aucun additif ne corrige le fer.",
  "Manganese, zinc, copper or iron feeds tie glyphosate up like very hard water: separate passes.":
    "Les apports de manganèse, zinc, cuivre ou fer bloquent le glyphosate comme une eau très dure : passages séparés.",
  "A full EDTA or DTPA chelate is the only metal feed that may go in: after the conditioner, before glyphosate.":
    "Seul apport métallique admis : un chélate complet EDTA ou DTPA, après le correcteur, avant le glyphosate.",
  "A calcium or magnesium feed adds thousands of mg/L hardness: no conditioner dose carries that. Separate passes.":
    "Un apport de calcium ou magnésium ajoute des milliers de mg/L de dureté : aucune dose de correcteur n'y suffit. Passages séparés.",
  "Mud holds glyphosate at once and no conditioner helps. A coin on the floor of a bucket must be seen; 20 NTU is our reading of that.":
    "La boue retient aussitôt le glyphosate et aucun correcteur n'aide. Une pièce au fond d'un seau doit se voir ; 20 NTU en est notre lecture.",
  "Clay takes this active out at once and no conditioner helps: clean water only. The limit of 20 NTU is ours.":
    "L'argile neutralise aussitôt cette substance et aucun correcteur n'aide : eau claire seulement. Notre limite : 20 NTU.",
  "From about 400 mg/L hardness 2,4-D amine lost control; ammonium sulfate at 20 g/L brought it back.":
    "Dès environ 400 mg/L de dureté, le 2,4-D amine a perdu en efficacité ; 20 g/L de sulfate d'ammonium l'ont rétablie.",
  "Above 600 mg/L hardness one guide calls 2,4-D amine totally deactivated: ester form or conditioned water.":
    "Au-dessus de 600 mg/L de dureté, un guide dit le 2,4-D amine totalement désactivé : forme ester ou eau corrigée.",
  "Schortgen and Patton (2020): at 600 mg/L ammonium sulfate gave full control.":
    "Schortgen et Patton (2020) : à 600 mg/L, le sulfate d'ammonium a donné pleine efficacité.",
  "Calcium and magnesium phenoxy salts can fall out of hard water: conditioner first, jar test. Not computed here.":
    "Les sels phénoxy de calcium et de magnésium peuvent précipiter en eau dure : correcteur d'abord, essai au bocal. Non calculé ici.",
  "2,4-D ester was not antagonised at 600 mg/L hardness: no conditioner needed for it.":
    "Le 2,4-D ester n'a pas été antagonisé à 600 mg/L de dureté : pas besoin de correcteur pour lui.",
  "Bicarbonate weakens 2,4-D amine and ammonium sulfate helps less here: other water, top rate or ester form.":
    "Le bicarbonate affaiblit le 2,4-D amine et le sulfate d'ammonium aide moins ici : autre eau, dose maximale ou forme ester.",
  "Sources disagree on MCPA: Saskatchewan states no antagonism by bicarbonate or hardness.":
    "Les sources divergent sur le MCPA : la Saskatchewan affirme l'absence d'antagonisme par bicarbonate ou dureté.",
  "An Ontario guide calls MCPA amine sensitive to bicarbonate.":
    "Un guide de l'Ontario dit le MCPA amine sensible au bicarbonate.",
  "Ammonium sulfate does not fully cure manganese antagonism of 2,4-D amine: keep the feed out.":
    "Le sulfate d'ammonium ne lève pas tout l'antagonisme du manganèse sur le 2,4-D amine : exclure cet apport.",
  "Water cleared with alum is not for amine products.":
    "Pas d'eau clarifiée à l'alun pour les produits amine.",
  "At pH 9 glufosinate control fell 8 to 17 points against pH 4: slightly acid water.":
    "À pH 9, l'efficacité du glufosinate a perdu 8 à 17 points face à pH 4 : eau légèrement acide.",
  "At 500 and 1,000 mg/L hardness glufosinate was antagonised (about 20 points at 1,000); ammonium sulfate restored it.":
    "À 500 et 1000 mg/L de dureté, le glufosinate a été antagonisé (environ 20 points à 1000). Le sulfate d'ammonium l'a rétabli.",
  "At 500 and 1,000 mg/L hardness this active was antagonised; ammonium sulfate restored it.":
    "À 500 et 1000 mg/L de dureté, cette substance a été antagonisée ; le sulfate d'ammonium l'a rétablie.",
  "Mesotrione lost 18 to 28 points at 1,000 mg/L hardness; the authors advise water below 200 mg/L.":
    "La mésotrione a perdu 18 à 28 points à 1000 mg/L de dureté ; les auteurs conseillent moins de 200 mg/L.",
  "In one trial mesotrione did best at pH 6.5, worse at 4 and at 9. The limits of 5 and 8.5 are ours.":
    "Dans un essai, la mésotrione a fait le mieux à pH 6,5, moins bien à 4 et à 9. Nos limites : 5 et 8,5.",
  "Calcium, magnesium and iron carbonates halved imazethapyr in pots; ammonium sulfate did most against it. The limits of 300 mg/L are ours.":
    "En pots, les carbonates de calcium, magnésium et fer ont réduit de moitié l'imazéthapyr. Le sulfate d'ammonium y a le mieux remédié. Les limites de 300 mg/L sont les nôtres.",
  "Bicarbonate cuts the dims: ammonium sulfate at 1 % w/v or 28 % UAN cures it. A sequestrant or softener does not.":
    "Le bicarbonate réduit les dimes : sulfate d'ammonium à 1 % m/v ou solution azotée 28 % y remédient. Un séquestrant ou adoucisseur, non.",
  "Ammonium is the published cure for bicarbonate with the dims: ammonium sulfate at 1 % w/v.":
    "L'ammonium est le remède publié au bicarbonate avec les dimes : sulfate d'ammonium à 1 % m/v.",
  "A sodium sequestrant leaves bicarbonate and adds sodium: it does not help the dims.":
    "Un séquestrant sodique laisse le bicarbonate et ajoute du sodium : il n'aide pas les dimes.",
  "Hardness is not what hurts the dims: calcium sulfate water did not reduce them.":
    "Ce n'est pas la dureté qui nuit aux dimes : une eau au sulfate de calcium ne les a pas réduits.",
  "A softener leaves bicarbonate and adds sodium: still bad for the dims.":
    "Un adoucisseur laisse le bicarbonate et ajoute du sodium : toujours mauvais pour les dimes.",
  "Bentazon antagonises the dims: ammonium sulfate or UAN reduces it, separate sprays cure it.":
    "La bentazone antagonise les dimes : sulfate d'ammonium ou solution azotée limite cela, traiter à part y remédie.",
  "This active breaks down in alkaline water: bring the tank to pH 5 to 6 before it goes in, spray at once.":
    "Cette substance se dégrade en eau alcaline : amener la cuve à pH 5 à 6 avant de l'ajouter, pulvériser aussitôt.",
  "Formulated suspensions lose far less than dissolved active (Atwood and others 1987).":
    "Les suspensions formulées perdent bien moins que la substance dissoute (Atwood et autres 1987).",
  "This conditioner makes the tank alkaline and the active would break down: use an acid or part-neutralised one.":
    "Ce correcteur rend la cuve alcaline et la substance se dégraderait : en prendre un acide ou en partie neutralisé.",
  "Dissolved, it lasts hours at pH 8 and minutes at pH 9. Slightly acid water, mixed just before use.":
    "Dissous, il tient des heures à pH 8 et des minutes à pH 9. Eau légèrement acide, mélange juste avant usage.",
  "An extension guide warns of water above pH 8 for organophosphates and carbamates.":
    "Un guide de conseil met en garde contre une eau au-dessus de pH 8 pour organophosphorés et carbamates.",
  "Half-lives of this one are days to weeks at pH 9.":
    "À pH 9, les demi-vies de celui-ci vont de jours à semaines.",
  "Oil carries captan into leaf and fruit: not together, and 10 to 12 days apart or more.":
    "L'huile fait entrer le captane dans feuille et fruit : pas ensemble, et à 10 à 12 jours d'écart ou plus.",
  "Oil raises crop injury from chlorothalonil: keep the interval of the label.":
    "L'huile aggrave les dégâts du chlorothalonil à la culture : respecter l'intervalle de l'étiquette.",
  "Not with alkaline copper: it breaks down.": "Pas avec du cuivre alcalin : la substance se dégrade.",
  "Fosetyl-aluminium makes the spray acid, which sets copper free: not together.":
    "Le fosétyl-aluminium acidifie la bouillie, ce qui libère le cuivre : pas ensemble.",
  "Copper ties up thiophanate-methyl: not together.":
    "Le cuivre bloque le thiophanate-méthyl : pas ensemble.",
  "Not with nitrogen or metal feeds on tender crops: injury.":
    "Pas avec des apports d'azote ou de métaux sur cultures sensibles : dégâts.",
  "Strong chelants take the metals out of mancozeb and break it up.":
    "Les chélatants forts retirent les métaux du mancozèbe et le brisent.",
  "Mancozeb breaks down in acid water: no acidifier.":
    "Le mancozèbe se dégrade en eau acide : pas d'acidifiant.",
  "Above pH 4 to 5 ethephon gives off its ethylene in the tank: spray within hours.":
    "Au-dessus de pH 4 à 5, l'éthéphon dégage son éthylène en cuve : pulvériser dans les heures.",
  "Water of 300 mg/L alkalinity (366 mg/L as bicarbonate) weakened ethephon on bedding plants, against 50 mg/L.":
    "Une eau à 300 mg/L d'alcalinité (366 mg/L en bicarbonate) a affaibli l'éthéphon sur plantes à massif, contre 50 mg/L.",
  "A strong ammonium sulfate premix in this water can drop gypsum: dissolve it in the main tank or in soft water.":
    "Un prémélange concentré de sulfate d'ammonium dans cette eau peut déposer du gypse : dissoudre en cuve principale ou eau douce.",
  "Gypsum forming as the drop dries is how ammonium sulfate takes the calcium. It takes no magnesium.":
    "Le sulfate d'ammonium prend le calcium par le gypse formé quand la goutte sèche. Il ne prend pas de magnésium.",
  "North Dakota: under 4 lb per 100 US gal (4.8 g/L) ammonium sulfate may not do the job in hard water.":
    "Dakota du Nord : sous 4 lb par 100 gal US (4,8 g/L), le sulfate d'ammonium peut échouer en eau dure.",
  "Phosphate clouds hard water above about pH 6.5: calcium phosphate fines reach the screens.":
    "Le phosphate trouble l'eau dure au-dessus de pH 6,5 environ : des fines de phosphate de calcium atteignent les filtres.",
  "Magnesium, ammonium and phosphate above pH 7 can drop struvite.":
    "Magnésium, ammonium et phosphate au-dessus de pH 7 peuvent déposer de la struvite.",
  "Near equal amounts the calcium phosphonate can fall out as floc: jar test.":
    "À quantités proches, le phosphonate de calcium peut précipiter en flocons : essai au bocal.",
  "Below about pH 2.5 EDTA falls out as the free acid. Do not premix chelant with strong acid.":
    "Sous pH 2,5 environ, l'EDTA précipite en acide libre. Ne pas prémélanger chélatant et acide fort.",
  "Ammonium in an alkaline tank gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "L'ammonium en cuve alcaline dégage du gaz ammoniac : suffocant dans un local, et l'azote est perdu.",
  "Strong potassium solutions can salt out the potassium salt of amine mixes: dilute first, jar test.":
    "Le potassium en solution forte peut précipiter le sel de potassium des mélanges d'amines : diluer d'abord, essai au bocal.",
  "Dry ammonium salts cool the water as they dissolve: pre-dissolve or use the liquid.":
    "Les sels d'ammonium secs refroidissent l'eau en se dissolvant : prédissoudre ou prendre le liquide.",
  "Enter the nitrogen where a scheme counts it: 2 % ammonium sulfate at 100 L/ha is 0.42 kg N/ha.":
    "Saisir l'azote là où un programme le compte : 2 % de sulfate d'ammonium à 100 L/ha font 0,42 kg N/ha.",
  "Iron and manganese drop out on airing and plug screens: aerate and settle first. The limits of 5 and 2 mg/L are ours.":
    "Fer et manganèse précipitent à l'air et bouchent les filtres : d'abord aérer et laisser déposer. Nos limites : 5 et 2 mg/L.",
  "The cation formula gives iron a coefficient, so treats it as correctable.":
    "La formule des cations donne un coefficient au fer, donc le traite comme corrigeable.",
  "Salt breaks emulsions: jar test for an hour. The limit of 3,000 µS/cm is ours; sources say only high.":
    "Le sel casse les émulsions : essai au bocal d'une heure. Notre limite : 3000 µS/cm ; les sources disent seulement élevé.",
  "Above 1,000 µS/cm look at the single ions, not at the total.":
    "Au-dessus de 1000 µS/cm, regarder chaque ion, non le total.",
  "Above 10,000 µS/cm the water is very salty: find out which salts before use.":
    "Au-dessus de 10 000 µS/cm, l'eau est très salée : savoir quels sels avant usage.",
  "An emulsifiable concentrate in a salt-rich carrier may cream or oil out: compatibility agent and jar test.":
    "Un concentré émulsionnable en support riche en sels peut crémer ou relâcher l'huile : agent de compatibilité et essai au bocal.",
  "Very cold or hot spray water cut control in trials: at 5 and 56 °C, not at 22 and 39 °C. The limits of 10 and 45 °C are ours.":
    "En essai, l'eau très froide ou chaude a réduit l'efficacité (5 et 56 °C, pas 22 et 39 °C). Nos limites : 10 et 45 °C.",
  "Cold water: dry products and bags dissolve and disperse slowly. Wait, stir, check the screens.":
    "Eau froide : produits secs et sachets se dissolvent et se dispersent lentement. Attendre, remuer, vérifier les filtres.",
  "Water-soluble bags go into plain water and must be gone before any conditioner: salts stop the film dissolving.":
    "Les sachets hydrosolubles vont en eau seule et doivent avoir disparu avant tout correcteur. Les sels empêchent le film de se dissoudre.",
  "Sources that put the conditioner first.": "Des sources qui mettent le correcteur d'abord.",
  "Make a slurry of dry products first; let it disperse fully before the next product.":
    "Délayer d'abord les produits secs en pâte fluide ; laisser disperser entièrement avant le produit suivant.",
  "Sources differ on solutions before or after emulsions: label first, then jar test.":
    "Les sources divergent, solutions avant ou après les émulsions : l'étiquette d'abord, puis essai au bocal.",
  "Manitoba and Oklahoma: before; North Dakota: after.":
    "Manitoba et Oklahoma : avant ; Dakota du Nord : après.",
  "More than three partners: the jar test is not optional.":
    "Plus de trois partenaires : l'essai au bocal n'est pas facultatif.",
  "Do not keep mixed loads overnight unless the label allows it. Restart the agitator well before spraying.":
    "Ne pas garder un mélange en cuve la nuit, sauf si l'étiquette le permet. Relancer l'agitation bien avant de pulvériser.",
  "No loss in 24 to 72 h for several herbicides in trials.":
    "En essai, aucune perte en 24 à 72 h pour plusieurs herbicides.",
  "Use an iprodione mixture on the day it is made.": "Employer un mélange d'iprodione le jour même.",
  "Carbonate with glyphosate or any acid gives off carbon dioxide. Open the vent, add slowly, wait before closing.":
    "Le carbonate avec glyphosate ou tout acide dégage du gaz carbonique. Ouvrir l'évent, verser lentement, attendre avant de fermer.",
  "Carbonate makes scale in hard water. It raises the pH; it is no conditioner against hardness.":
    "Le carbonate fait du tartre en eau dure. Il relève le pH ; ce n'est pas un correcteur de dureté.",
  "Near equal amounts the calcium polyacrylate can fall out as floc: jar test.":
    "À quantités proches, le polyacrylate de calcium peut précipiter en flocons : essai au bocal.",
  "Anionic wetters and polymers inactivate paraquat and diquat: non-ionic only.":
    "Mouillants et polymères anioniques inactivent paraquat et diquat : non ioniques seulement.",
  "Softening swaps calcium for sodium: better for glyphosate, but high sodium still weakens salts. Measure again after the softener.":
    "L'adoucissement remplace le calcium par du sodium : mieux pour le glyphosate, mais beaucoup de sodium affaiblit encore les sels. Remesurer après l'adoucisseur.",
  "Chlorine kills live products: let mains water stand open for a day first.":
    "Le chlore tue les produits vivants : laisser d'abord l'eau du réseau à l'air un jour.",
  "Live products die at extreme pH: keep the tank between pH 5 and 8. The limits are ours.":
    "Les produits vivants meurent aux pH extrêmes : garder la cuve entre pH 5 et 8. Ce sont nos limites.",
  "Copper kills live products: separate passes.": "Le cuivre tue les produits vivants : passages séparés.",
  "Soap turns to curd in hard water: soft water, or a sequestrant first. The limit of 100 mg/L is ours.":
    "Le savon caille en eau dure : eau douce, ou séquestrant d'abord. Notre limite : 100 mg/L.",
  "Ammonium thiosulfate lowered control by glyphosate and raised the pH. It is no stand-in for ammonium sulfate.":
    "Le thiosulfate d'ammonium a réduit l'efficacité du glyphosate et relevé le pH. Il ne remplace pas le sulfate d'ammonium.",
  "Acid breaks thiosulfate: sulfur plugs screens and sulfur dioxide comes off.":
    "L'acide détruit le thiosulfate : le soufre bouche les filtres et du dioxyde de soufre se dégage.",
  "Acid with bleach gives chlorine gas. Rinse fully between bleach cleaning and any acid.":
    "L'acide avec la javel donne du gaz chlore. Rincer à fond entre le nettoyage à la javel et tout acide.",
  "Ammonium or urea with bleach gives chloramine gases. Rinse fully after bleach cleaning.":
    "Ammonium ou urée avec la javel donne des gaz chloramines. Rincer à fond après nettoyage à la javel.",
  "Acid with lime sulfur sets poisonous hydrogen sulfide free.":
    "L'acide avec la bouillie sulfocalcique libère du sulfure d'hydrogène toxique.",
  "Ammonium with lime, caustic or ash gives ammonia gas: choking in a shed, and the nitrogen is lost.":
    "L'ammonium avec chaux, soude ou cendre dégage du gaz ammoniac : suffocant dans un local, et l'azote est perdu.",
  "Captan with lime or borate breaks down within minutes to hours once dissolved.":
    "Avec chaux ou borate, le captane dissous se dégrade en quelques minutes à quelques heures.",
  "Formulated captan lost 27 % in 48 h at pH 9.5 (Atwood and others 1987).":
    "Le captane formulé a perdu 27 % en 48 h à pH 9,5 (Atwood et autres 1987).",
  "Not with lime: alkaline breakdown.": "Pas avec la chaux : dégradation alcaline.",
  "Dimethoate is not mixed with sulfur or alkaline materials.":
    "Le diméthoate ne se mélange pas au soufre ni aux produits alcalins.",
  "Octaborate takes the tank to pH 8 and above: acidify after it and before this active. Boric acid does not.":
    "L'octaborate amène la cuve à pH 8 et plus : acidifier après lui et avant cette substance. L'acide borique, non.",
  "Borate with calcium feeds can cloud: jar test.":
    "Borate et apports de calcium peuvent troubler : essai au bocal.",
  "Boron turns the bag film to rubber: never together, and rinse boron out before using bags.":
    "Le bore change le film des sachets en caoutchouc : jamais ensemble, et rincer le bore avant d'employer des sachets.",
  "Mineral oil with sulfur burns leaves: never in one tank, and weeks apart.":
    "Huile minérale et soufre brûlent les feuilles : jamais en même cuve, et à des semaines d'écart.",
  "Phosphorous acid products acidify and set copper free: days apart, follow both labels.":
    "L'acide phosphoreux acidifie et libère le cuivre : à des jours d'écart, suivre les deux étiquettes.",
  "Calcium feed with a sulfate drops gypsum in the tank: never together, not in a premix either.":
    "Un apport de calcium avec un sulfate dépose du gypse en cuve : jamais ensemble, pas non plus en prémélange.",
  "Calcium feed with phosphates drops calcium phosphate: never together.":
    "Apport de calcium et phosphates déposent du phosphate de calcium : jamais ensemble.",
  "Iron with phosphate drops iron phosphate.": "Fer et phosphate déposent du phosphate de fer.",
  "Magnesium feed with ammonium phosphate can drop struvite, above pH 7 most.":
    "Apport de magnésium et phosphate d'ammonium peuvent déposer de la struvite, surtout passé pH 7.",
  "A strong premix of ammonium sulfate with potassium salts can crystallise potassium sulfate. Add both to the main tank.":
    "Un prémélange concentré de sulfate d'ammonium et de sels de potassium peut cristalliser du sulfate de potassium. Ajouter les deux en cuve principale.",
  "Metal salts undo the conditioning: last in, if at all. The shares computed here are without them.":
    "Les sels métalliques défont la correction : en dernier, ou pas du tout. Les parts calculées ici sont sans eux.",
  "Glyphosate in galvanised or bare steel gives off hydrogen, which can ignite: plastic, stainless or lined tanks only.":
    "Le glyphosate en acier galvanisé ou nu dégage de l'hydrogène, qui peut s'enflammer : cuves plastique, inox ou revêtues seulement.",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the whole machine the same day.":
    "Les sels d'ammonium attaquent laiton, cuivre et zinc et rouillent l'acier : rincer toute la machine le jour même.",
  "Acid strips zinc and gives hydrogen: plastic gear for concentrates, rinse after.":
    "L'acide décape le zinc et dégage de l'hydrogène : matériel plastique pour le concentré, rincer après.",
  "Copper sulfate eats steel and aluminium: plastic tank only.":
    "Le sulfate de cuivre attaque acier et aluminium : cuve plastique seulement.",
  "Ammonium and urea sprays can scorch crop leaves in hot, dry or bright weather. The limit of 28 °C is ours.":
    "Ammonium et urée pulvérisés peuvent brûler la feuille de la culture par temps chaud, sec ou lumineux. Notre limite : 28 °C.",
  "Montana: above 400 mg/L hardness with iron many herbicides lose control. The iron limit of 0.3 mg/L is ours.":
    "Montana : au-dessus de 400 mg/L de dureté avec du fer, bien des herbicides perdent en efficacité. Notre limite : 0,3 mg/L de fer.",
  "A turf guide treats water from 200 mg/L hardness.":
    "Un guide de gazon traite l'eau dès 200 mg/L de dureté.",
  "Other lines for the same water: 150, 300, 350 and 700 mg/L.":
    "Autres seuils pour la même eau : 150, 300, 350 et 700 mg/L.",
  "2,4-D choline at a third of the rate lost control evenly with hardness: 20 points or more at 1,000 mg/L.":
    "Au tiers de dose, le 2,4-D choline perdait régulièrement avec la dureté : 20 points ou plus à 1000 mg/L.",
  "A Victorian guide lists MCPA among what mud weakens. The limit of 20 NTU is ours.":
    "Un guide du Victoria compte le MCPA parmi ce que la boue affaiblit. Notre limite : 20 NTU.",
  "A Victorian guide says triazines break down faster in salty water: spray at once. The limit of 3,000 µS/cm is ours.":
    "Un guide du Victoria dit que les triazines se dégradent plus vite en eau salée : pulvériser aussitôt. Notre limite : 3000 µS/cm.",
  "No trial was found for it.": "Aucun essai trouvé pour cela.",
  "Bulletins print half-lives of 12 h at pH 6 and 48 min at pH 9 for dimethoate. Do not rely on them.":
    "Des bulletins impriment pour le diméthoate des demi-vies de 12 h à pH 6 et 48 min à pH 9. Ne pas s'y fier.",
  "Registration data: 68 days at pH 7, 4.4 days at pH 9.":
    "Données d'homologation : 68 jours à pH 7, 4,4 jours à pH 9.",
  "In very hard water wetting and emulsifying suffer: jar test. The limit of 700 mg/L is ours.":
    "En eau très dure, mouillage et émulsion souffrent : essai au bocal. Notre limite : 700 mg/L.",
  "Below 500 µS/cm a water is probably good for spraying.":
    "Sous 500 µS/cm, une eau est probablement bonne pour pulvériser.",
  "As a dilute spray at pH 9.5 phosmet lost 70 % in 48 h; twenty times stronger it lost 10 %.":
    "En bouillie diluée à pH 9,5, le phosmet a perdu 70 % en 48 h ; vingt fois plus fort, 10 %.",
  "Products dissolve and emulsify best between about 10 and 27 °C.":
    "Les produits se dissolvent et s'émulsionnent le mieux entre 10 et 27 °C environ.",
  "In the tank it pairs with calcium only weakly; on the leaf gypsum takes the calcium out as the drop dries.":
    "En cuve il s'apparie peu au calcium ; sur la feuille, le gypse retire le calcium quand la goutte sèche.",
  "It also aids uptake in some weeds. No equilibrium shows that.":
    "Il aide aussi l'absorption de certaines adventices. Aucun équilibre ne le montre.",
  "Dissolving cools the water: slow below about 8 °C.":
    "La dissolution refroidit l'eau : lente sous 8 °C environ.",
  "It does not take calcium out: calcium nitrate stays dissolved.":
    "Il ne retire pas le calcium : le nitrate de calcium reste dissous.",
  "Urea takes no part in the chemistry of the tank and is left out of it.":
    "L'urée n'intervient pas dans la chimie de la cuve et n'y est pas comptée.",
  "In one hard water it raised glyphosate potency 1.64 times, ammonium sulfate 2.52 times.":
    "Dans une eau dure, il a multiplié la puissance du glyphosate par 1,64, le sulfate d'ammonium par 2,52.",
  "Which hydrate is in the bag makes 9 % difference in strength.":
    "Selon l'hydrate dans le sac, la force diffère de 9 %.",
  "It lets protons go when it takes calcium: the tank turns more acid.":
    "Il lâche des protons en prenant le calcium : la cuve devient plus acide.",
  "Dissolves slowly in cold water. Below about pH 2.5 the free acid falls out.":
    "Se dissout lentement en eau froide. Sous pH 2,5 environ, l'acide libre précipite.",
  "Sold solutions often hold 1 to 2 % free caustic, which is not counted here.":
    "Les solutions vendues contiennent souvent 1 à 2 % de soude libre, non comptée ici.",
  "The calcium salt may fall out near equal moles in hard water above pH 6: jar test.":
    "Le sel de calcium peut précipiter à moles presque égales en eau dure au-dessus de pH 6 : essai au bocal.",
  "No iron constants are published for it here: its hold on iron is not known.":
    "Pas de constantes publiées ici pour le fer : sa prise sur le fer n'est pas connue.",
  "It turns slowly to simpler phosphates in stored solution, faster in acid.":
    "En solution stockée il se change lentement en phosphates plus simples, plus vite en acide.",
  "Under-dosed it clouds hard water. No iron constants: its hold on iron is not known.":
    "Sous-dosé, il trouble l'eau dure. Pas de constantes du fer : sa prise sur le fer n'est pas connue.",
  "Above about pH 6 it clouds hard water with calcium phosphate.":
    "Au-dessus de pH 6 environ, il trouble l'eau dure de phosphate de calcium.",
  "Low pH alone did not raise glyphosate activity; about 1 % v/v of product was needed in 1,000 mg/L water.":
    "Un pH bas seul n'a pas renforcé l'effet du glyphosate. Il fallait environ 1 % v/v de produit en eau à 1000 mg/L.",
  "No spray trial was found.": "Aucun essai de pulvérisation trouvé.",
  "At spray pH it holds calcium poorly; it helps with iron and in alkaline water.":
    "Au pH de bouillie il retient mal le calcium ; il aide pour le fer et en eau alcaline.",
  "A weak binder of calcium: an acidifier only.": "Lie faiblement le calcium : acidifiant seulement.",
  "Clouds hard water above about pH 6.5; with magnesium above pH 7 struvite may fall out.":
    "Trouble l'eau dure au-dessus de pH 6,5 environ ; avec du magnésium au-dessus de pH 7, la struvite peut précipiter.",
  "Salts out in store near −10 °C.": "Cristallise au stockage vers −10 °C.",
  "Salts out in store near −2 °C.": "Cristallise au stockage vers −2 °C.",
  "It does not take calcium out: calcium chloride stays dissolved and wet on the leaf.":
    "Il ne retire pas le calcium : le chlorure de calcium reste dissous et humide sur la feuille.",
  "Chloride pits stainless steel: rinse the same day.": "Le chlorure pique l'inox : rincer le jour même.",
  "It binds calcium as citric acid does, without the acid.":
    "Il lie le calcium comme l'acide citrique, sans l'acide.",
  "It turns bicarbonate into carbon dioxide: the tank foams. Vent it.":
    "Il change le bicarbonate en gaz carbonique : la cuve mousse. L'éventer.",
  "Low pH alone did not raise glyphosate activity.": "Un pH bas seul n'a pas renforcé l'effet du glyphosate.",
  "A weak binder of calcium: an acidifier first of all.":
    "Lie faiblement le calcium : avant tout un acidifiant.",
  "Strong solutions hold part of it as chains that split slowly.":
    "En solution forte, une part est en chaînes qui se scindent lentement.",
  "Acid part of several acidifying wetting agents. What the wetting agent does is not computed.":
    "Partie acide de plusieurs mouillants acidifiants. L'action du mouillant n'est pas calculée.",
  "Calcium tartrate may fall out within hours. It is not computed: jar test.":
    "Le tartrate de calcium peut précipiter en quelques heures. Non calculé : essai au bocal.",
  "Part of it stands as lactones, which open slowly; all is counted as acid.":
    "Une part est en lactones, qui s'ouvrent lentement ; tout est compté comme acide.",
  "Clouds hard water above about pH 6.": "Trouble l'eau dure au-dessus de pH 6 environ.",
  "Tried in the field beside ammonium sulfate with glyphosate, dicamba and clethodim.":
    "Essayé au champ à côté du sulfate d'ammonium avec glyphosate, dicamba et cléthodime.",
  "Clouds hard water; how much calcium stays dissolved is a matter of time.":
    "Trouble l'eau dure ; combien de calcium reste dissous dépend du temps.",
  "Holds dicamba sprays above pH 5. It is no hardness conditioner: it makes scale.":
    "Tient les bouillies de dicamba au-dessus de pH 5. Pas un correcteur de dureté : fait du tartre.",
  "Lowered dicamba volatility at 0.05 mol/L. It is not sold against hardness.":
    "A réduit la volatilité du dicamba à 0,05 mol/L. Il n'est pas vendu contre la dureté.",
  "Holds iron(III) up to about pH 9.": "Retient le fer(III) jusqu'à pH 9 environ.",
  "Weak for calcium and magnesium; useful for iron, copper and zinc.":
    "Faible pour calcium et magnésium ; utile pour fer, cuivre et zinc.",
  "Sold solutions hold fumarate, aspartate and malate besides, which are not counted.":
    "Les solutions vendues contiennent aussi fumarate, aspartate et malate, non comptés.",
  "Sold acid holds a few per cent of other acids from making it, which are not counted.":
    "L'acide vendu contient quelques pour cent d'autres acides de fabrication, non comptés.",
  "A little keeps scale from forming well below equal moles. No equilibrium shows that.":
    "Un peu, bien en deçà des moles égales, empêche le tartre de se former. Aucun équilibre ne le montre.",
  "Grades differ in acid and sodium: measure the pH of the tank.":
    "Les qualités diffèrent en acide et sodium : mesurer le pH de la cuve.",
  "No constants with iron are carried: its hold on iron is not known here.":
    "Pas de constantes avec le fer : sa prise sur le fer n'est pas connue ici.",
  "A scale inhibitor. No metal constants exist: only its acid is computed.":
    "Un antitartre. Pas de constantes de métaux : seul son acide est calculé.",
  "The product is a mixture of chains that bind more strongly. It is counted as a ring: an indication.":
    "Le produit est un mélange de chaînes qui lient plus fort. Il est compté comme un cycle : une indication.",
  "Sticks as a lump when tipped into still water.": "Colle en bloc si versé dans une eau immobile.",
  "Counted by units of acrylate, with constants near half neutralisation: an indication.":
    "Compté par unités d'acrylate, avec des constantes vers demi-neutralisation : une indication.",
  "With about as much calcium as it has charge it gels: jar test.":
    "Avec à peu près autant de calcium que de charge, il gélifie : essai au bocal.",
  "North Dakota cation formula: a minimum to cancel the water, found on plants, not an equilibrium.":
    "Formule des cations du Dakota du Nord : un minimum pour annuler l'eau, trouvé sur plantes, non un équilibre.",
  "It has no bicarbonate term.": "Elle n'a pas de terme bicarbonate.",
  "Not known here: {ions}; the dose is a least one.": "Non connu ici : {ions} ; la dose est un minimum.",
  "The formula's own extension authors advise 4 to 6 lb per 100 US gal, whatever the formula says.":
    "Les conseillers auteurs de la formule préconisent eux-mêmes 4 à 6 lb par 100 gal US, quoi qu'elle dise.",
};
