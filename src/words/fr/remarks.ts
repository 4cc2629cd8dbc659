import type { Phrases } from "../phrases.ts";

/** What the engine remarks on ways out, on the clock, on filling and on the sprayer. */
export const REMARKS: Phrases = {
  "The {form} does not ionise in the tank: nothing for metals to bind.":
    "Ne s'ionise pas en cuve ({form}) : rien à lier pour les métaux.",
  "No published binding constants: not known.": "Pas de constantes publiées : non connu.",
  "{active}: {share} in 100 free on the leaf rest on borrowed activity; by complexes alone {other}. Try it first.":
    "{active} : {share} sur 100 libres sur la feuille reposent sur une activité empruntée ; par complexes seuls {other}. L'essayer d'abord.",
  "{one} with {other}: how they act on each other in strong solution is carried from memory.":
    "{one} avec {other} : leur action réciproque en solution forte est donnée de mémoire.",
  "Sources say: {what}.": "Selon les sources : {what}.",
  "No hydrolysis data near pH {pH}.": "Pas de données d'hydrolyse près de pH {pH}.",
  "For dissolved active; suspended or emulsified active breaks down more slowly.":
    "Pour la substance dissoute ; en suspension ou émulsion elle se dégrade moins vite.",
  "No holding time given.": "Durée en cuve non donnée.",
  "Not known here: {what}; the dose is a least one.": "Non connu ici : {what} ; la dose est un minimum.",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}.":
    "Fer(II) à l'air, pH de cuve {pH} : moitié en fer(III) après {time}.",
  "Iron(II) in air at the tank's pH {pH}: half is iron(III) after {time}; {share} in 100 when the last is sprayed.":
    "Fer(II) à l'air, pH de cuve {pH} : moitié en fer(III) après {time} ; {share} sur 100 à la fin.",
  "How warmth speeds it is from memory.": "L'effet de la chaleur est donné de mémoire.",
  "Taken to stay as tested.": "Supposé rester tel qu'analysé.",
  "under 1": "moins de 1",
  "{count} days": "{count} jours",
  "{count} years": "{count} ans",
  "{count} days, too long to wait for,": "{count} jours (trop long à attendre)",
  "more than ten years": "plus de dix ans",
  "an hour or less": "une heure ou moins",
  "Common practice.": "Pratique courante.",
  "With spoons: {what}.": "Avec des cuillères : {what}.",
  "{count} teaspoon": "{count} cuillère à café",
  "{count} teaspoons": "{count} cuillères à café",
  "10 g on a kitchen scale": "10 g à la balance de cuisine",
  "With spoons: make {what} up to {volume} mL with water, shake, use {part} of it.":
    "Avec des cuillères : porter {what} à {volume} mL avec de l'eau, agiter, en prendre {part}.",
  "Leave {volume} mL of water out of the jar.": "Mettre {volume} mL d'eau de moins dans le bocal.",
  "Too small for spoons, even diluted: use a syringe and a balance, or a bigger jar.":
    "Trop peu pour des cuillères, même dilué : seringue et balance, ou plus grand bocal.",
  "Below {amount} {unit} and too small even for a dilution: use a bigger jar.":
    "Sous {amount} {unit} et trop peu même pour diluer : prendre un plus grand bocal.",
  "Take the same volume of water out of the jar's share.": "Ôter le même volume d'eau de la part du bocal.",
  "The leaf adds {amount} mmol of calcium to each litre of spray on it, as a neutral salt.":
    "La feuille apporte {amount} mmol de calcium par litre de bouillie, en sel neutre.",
  "Fill to {share} with clean water and start the agitator.":
    "Remplir à {share} d'eau propre et lancer l'agitation.",
  "Stop here.": "S'arrêter ici.",
  "Water and movement before any product.": "Eau et mouvement avant tout produit.",
  "Its formulation is used dry, undiluted or in oil.":
    "Sa formulation s'emploie sèche, pure ou dans l'huile.",
  "Its formulation has no place in the default order. Ask the label, then jar test.":
    "Sa formulation n'a pas de place dans l'ordre usuel. Lire l'étiquette, puis essai au bocal.",
  "Salt on a bag that is not dissolved leaves a gel that plugs screens.":
    "Du sel sur un sachet non dissous laisse un gel qui bouche les filtres.",
  "Added late or half dissolved it has to win back what is already held.":
    "Ajouté tard ou mal dissous, il doit reprendre ce qui est déjà lié.",
  "Suspensions settle. Spray the same day.": "Les suspensions déposent. Pulvériser le jour même.",
  "How strongly mud holds it was not found.": "La force de fixation à la boue n'a pas été trouvée.",
  "What clay takes at most was not found: the high end is too high.":
    "Le maximum fixé par l'argile n'a pas été trouvé : la borne haute est trop haute.",
  "Published orders differ: {other} before {name} in {who}; the other way round here.":
    "Les ordres publiés diffèrent : {other} avant {name} selon {who} ; ici l'inverse.",
  "Published orders differ: {other} before {name} in {who}; {same} first in {those}, as here.":
    "Les ordres publiés diffèrent : {other} avant {name} selon {who} ; {same} d'abord selon {those}, comme ici.",
  "Estimate: {other} stands in for {active} (class “{affinity}”).":
    "Estimation : {other} tient lieu de {active} (classe « {affinity} »).",
  "The borrowed metal constants may be ten times weaker or stronger.":
    "Les constantes empruntées peuvent être dix fois plus faibles ou plus fortes.",
  "Its acid constants are borrowed too.": "Ses constantes d'acidité sont aussi empruntées.",
  "{active} was entered as binding no metals.": "{active} est saisie comme ne liant aucun métal.",
  "No acid constants and no affinity were given for {active}: not known.":
    "Ni constantes d'acidité ni affinité pour {active} : non connu.",
  "No affinity was given for {active}: what holds it is not known. Its acid counts for the tank's pH.":
    "Pas d'affinité pour {active} : ce qui la lie n'est pas connu. Son acide compte pour le pH de cuve.",
  "Dose range of the label.": "Plage de dose de l'étiquette.",
  "Most dose of the label.": "Dose maximale de l'étiquette.",
  "The label gives no most dose: here {name} reaches its own limit.":
    "L'étiquette ne donne pas de maximum : ici {name} atteint sa propre limite.",
  "Nothing disclosed.": "Rien de divulgué.",
  "The label leaves open: {what}. Only what it gives an amount for is counted.":
    "L'étiquette laisse ouvert : {what}. Seul compte ce qu'elle chiffre.",
  "Least volume not given: searched down to half the planned volume. Label and coverage decide.":
    "Volume minimal non donné : cherché jusqu'à la moitié du volume prévu. L'étiquette et la couverture décident.",
  "Shown at the usual dose.": "Montré à la dose usuelle.",
  "Shown at the label's least dose.": "Montré à la dose minimale de l'étiquette.",
  "No usual dose is known: shown at the highest dose searched.":
    "Pas de dose usuelle connue : montré à la plus haute dose cherchée.",
  "The aim is met with nothing added.": "L'objectif est atteint sans ajout.",
  "What metals hold of the actives here is not known, so no dose was computed.":
    "Ce que les métaux lient ici n'est pas connu ; aucune dose n'est calculée.",
  "No dose up to {dose} g/L meets the aim; this is the best one tried.":
    "Aucune dose jusqu'à {dose} g/L n'atteint l'objectif ; voici la meilleure essayée.",
  "No dose up to {dose} g/L meets the aim in {count} of 100 draws; this is the best one tried.":
    "Aucune dose jusqu'à {dose} g/L n'atteint l'objectif dans {count} tirages sur 100 ; voici la meilleure essayée.",
  "{volume} L at {rate} L/min are sprayed in {time} h.":
    "{volume} L à {rate} L/min sont pulvérisés en {time} h.",
  "It is taken as the holding time; add filling, turning and travel.":
    "C'est pris comme durée en cuve ; ajouter remplissage, tournières et trajet.",
  "The holding time of the job is {time} h.": "La durée en cuve du dossier est {time} h.",
  "{volume} L stay in the machine: they do not reach {area} ha of the last load.":
    "{volume} L restent dans la machine : ils manquent sur {area} ha du dernier plein.",
  "Spray them out diluted, on the same crop, as the label allows.":
    "Les pulvériser dilués sur la même culture, selon l'étiquette.",
  "Rinsed with {volume} L in three parts, one part in {count} of the spray is left.":
    "Rincé avec {volume} L en trois fois, il reste une part sur {count} de bouillie.",
  "{label}: {amount} {unit} go through a hopper of {hopper} L in {count} portions.":
    "{label} : {amount} {unit} passent par un incorporateur de {hopper} L en {count} fois.",
  "Rinse each in before the next.": "Rincer chacune avant la suivante.",
  "The aim is met in free active per hectare, against the planned rate; a share of it is still held.":
    "L'objectif est atteint en substance libre par hectare, selon la dose prévue ; une part reste liée.",
  "Even the label's {rate} {unit} leaves less free than the aim asks of the planned rate.":
    "Même {rate} {unit} de l'étiquette laissent moins de libre que l'objectif sur la dose prévue.",
  "The highest rate is the label's for this crop, stage and season: check all three.":
    "La dose maximale vaut pour cette culture, ce stade et cette saison : vérifier les trois.",
  "Counted at the same acid equivalent, {rate} g/ha.": "Compté au même équivalent acide, {rate} g/ha.",
  "Rate, crop and stage are those of its own label.": "Dose, culture et stade selon sa propre étiquette.",
  "Esters can move as vapour in warm weather and injure crops that stand the amine.":
    "Par temps chaud les esters se volatilisent et blessent des cultures qui tolèrent l'amine.",
  "Air turns dissolved iron to rust, and rust sinks. Only settled iron no longer binds.":
    "L'air change le fer dissous en rouille, qui tombe. Seul le fer déposé ne lie plus.",
  "Rust that is sucked up plugs screens, and acid in the tank dissolves it again.":
    "La rouille aspirée bouche les filtres, et l'acide en cuve la redissout.",
  "Iron {before} mg/L; {after} mg/L taken to be left.": "Fer {before} mg/L ; {after} mg/L supposés restants.",
  "Iron held by peat or a chelant does not settle, nor does manganese.":
    "Le fer tenu par la tourbe ou un chélatant ne dépose pas, le manganèse non plus.",
  "Iron(II) needs about {time} of air at pH {pH}, then time to sink.":
    "Le fer(II) veut environ {time} d'air à pH {pH}, puis du temps pour déposer.",
  "Two conditioners: add one, let it dissolve, then the other. Jar test first, and not on one label alone.":
    "Deux correcteurs : ajouter l'un, laisser dissoudre, puis l'autre. Essai au bocal d'abord, et lire les deux étiquettes.",
  "Blend by meter or by marks, and test the blend: hardness shows whether the shares are right.":
    "Mélanger au compteur ou aux repères, puis analyser : la dureté dit si les parts sont justes.",
  "Hardness {hardness} and alkalinity {alkalinity} mg/L as CaCO3, pH {pH}.":
    "Dureté {hardness} et alcalinité {alkalinity} mg/L en CaCO3, pH {pH}.",
  "The softer water goes in first, so that no product meets the hard water alone.":
    "L'eau douce d'abord, pour qu'aucun produit ne rencontre seule l'eau dure.",
  "The film needs plain water: salts, boron and oil stop it dissolving.":
    "Le film veut de l'eau pure : sels, bore et huile l'empêchent de se dissoudre.",
  "It has to take the hardness before the active meets it.":
    "Il doit prendre la dureté avant que la substance la rencontre.",
  "It only helps before the products.": "Il n'aide qu'avant les produits.",
  "Dry products need the most water and time.": "Les produits secs veulent le plus d'eau et de temps.",
  "It must wet out before oils or surfactants are in.": "Il doit se mouiller avant huiles ou tensioactifs.",
  "Particles hung in water go in before oils.": "Les particules en suspension passent avant les huiles.",
  "Capsules go in with the suspensions, before oils.":
    "Les capsules vont avec les suspensions, avant les huiles.",
  "Already water-based: after the suspensions, before the oils.":
    "Déjà à base d'eau : après les suspensions, avant les huiles.",
  "Oil coats dry particles if it goes in before them.":
    "L'huile enrobe les particules sèches si elle les précède.",
  "A salt solution can break an emulsion that is not yet diluted.":
    "Une solution saline peut casser une émulsion non diluée.",
  "Last, against foam and coating.": "En dernier, contre mousse et enrobage.",
  "Metal salts here undo the conditioning: count them in the tank first.":
    "Les sels métalliques défont la correction : les compter d'abord.",
  "Last, if its label does not say otherwise.": "En dernier, sauf avis de l'étiquette.",
  "How {active} binds {metal} is not computed.": "La liaison de {metal} par {active} n'est pas calculée.",
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field.":
    "Ce n'est pas une preuve. Cela dit ce que cette eau a pu prendre à la dose, non ce qui s'est passé au champ.",
  "Exclude the other causes first.": "Exclure d'abord les autres causes.",
  "A conditioner went in after the products. The range runs from its full work to none at all.":
    "Un correcteur est venu après les produits. La plage va de son plein effet à aucun.",
  "Sources differ: a third (South Dakota), a quarter to three quarters (Manitoba), half to three quarters (Oklahoma).":
    "Les sources diffèrent : un tiers (Dakota du Sud), un à trois quarts (Manitoba), la moitié aux trois quarts (Oklahoma).",
  "The label decides.": "L'étiquette décide.",
  "a turf guide": "un guide de gazon",
  "water-soluble bags": "sachets hydrosolubles",
  conditioners: "correcteurs d'eau",
  "compatibility agents": "agents de compatibilité",
  defoamers: "antimousses",
  "dry products that dissolve": "produits secs solubles",
  "dry products that disperse": "produits secs dispersables",
  suspensions: "suspensions",
  capsules: "capsules",
  "emulsions in water": "émulsions dans l'eau",
  "oil dispersions": "dispersions huileuses",
  "emulsifiable concentrates": "concentrés émulsionnables",
  solutions: "solutions",
  surfactants: "tensioactifs",
  oils: "huiles",
  "liquid fertilisers": "engrais liquides",
  micronutrients: "oligo-éléments",
  "drift agents": "agents anti-dérive",
  "Adds a little nitrogen.": "Apporte un peu d'azote.",
  "Adds a little nitrogen and chloride.": "Apporte un peu d'azote et de chlorure.",
  "Ammonium harms fish, most of all in alkaline water.":
    "L'ammonium nuit aux poissons, surtout en eau alcaline.",
  "Readily biodegradable.": "Facilement biodégradable.",
  "Readily biodegradable by producers' statements.": "Facilement biodégradable selon les producteurs.",
  "Readily biodegradable as the S,S form.": "Facilement biodégradable sous forme S,S.",
  "Hardly biodegradable, least of all with iron or copper.": "Peu biodégradable, surtout avec fer ou cuivre.",
  "Carries metals along while it lasts.": "Entraîne des métaux tant qu'il dure.",
  "Phosphonates break down slowly, bind to sediment and end as phosphate.":
    "Les phosphonates se dégradent lentement, se fixent au sédiment et finissent en phosphate.",
  "Adds phosphorus: feeds algae where wash-down reaches water.":
    "Apporte du phosphore : nourrit les algues si l'eau de rinçage atteint un cours d'eau.",
  "Sulfate and urea last little.": "Sulfate et urée durent peu.",
  "A spill of the concentrate harms fish by its acid.":
    "Un déversement du concentré nuit aux poissons par son acide.",
  "Biodegradable once microbes are used to it.": "Biodégradable une fois les microbes adaptés.",
  "Poorly biodegradable and a strong carrier of metals.":
    "Peu biodégradable et entraîne fortement les métaux.",
  "Leaves sulfate.": "Laisse du sulfate.",
  "Harmless salts.": "Sels inoffensifs.",
  "Not readily biodegradable.": "Pas facilement biodégradable.",
  "Not readily biodegradable; little phosphorus.": "Pas facilement biodégradable ; peu de phosphore.",
  "Not biodegradable; binds to sludge and sediment.": "Non biodégradable ; se fixe aux boues et sédiments.",
};
