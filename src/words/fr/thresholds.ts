import type { Phrases } from "../phrases.ts";

/** From where on a water harms an active, as published. */
export const THRESHOLDS: Phrases = {
  "From about 150 to 350 mg/L as CaCO3 at low rates, 700 at high ones; the computed loss depends on rate, volume and pH.":
    "Dès 150 à 350 mg/L en CaCO3 environ à faible dose, 700 à forte. La perte calculée dépend de la dose, du volume et du pH.",
  "Iron(III) is bound one to one: each mg/L can hold about 3 mg/L of glyphosate.":
    "Le fer(III) se lie un pour un : chaque mg/L peut retenir environ 3 mg/L de glyphosate.",
  "Significant loss with NaHCO3 up to 600 mg/L in pot trials.":
    "Perte significative avec NaHCO3 jusqu'à 600 mg/L, en pots.",
  "Control at pH 9 below that at pH 4 (6 points or more, with dicamba).":
    "Efficacité à pH 9 sous celle à pH 4 (6 points ou plus, avec dicamba).",
  "Sodium above about 300 mg/L.": "Sodium au-dessus de 300 mg/L environ.",
  "Visibly muddy water.": "Eau visiblement boueuse.",
  "Linear, about 20 points less control at 1000 mg/L as CaCO3.":
    "Linéaire, environ 20 points d'efficacité en moins à 1000 mg/L en CaCO3.",
  "Each mg/L of iron can hold at most 3.2 mg/L of the acid, and above pH 5 iron goes to rust first.":
    "Chaque mg/L de fer retient au plus 3,2 mg/L de l'acide, et au-dessus de pH 5 le fer rouille d'abord.",
  "8-17 points less at pH 9 than pH 4.": "8 à 17 points de moins à pH 9 qu'à pH 4.",
  "pH 4 was best.": "pH 4 était le meilleur.",
  "Control falls from about 390-420 mg/L as CaCO3; near useless above 600.":
    "L'efficacité baisse dès 390 à 420 mg/L en CaCO3 environ ; presque nulle au-dessus de 600.",
  "Iron throws it out, manganese feeds antagonise.":
    "Le fer le fait précipiter, les engrais au manganèse sont antagonistes.",
  "500 mg/L HCO3; ammonium sulfate only partly corrects.":
    "500 mg/L HCO3 ; le sulfate d'ammonium ne corrige qu'en partie.",
  "Ca and Mg salts precipitate more readily; no hydrolysis.":
    "Les sels de Ca et Mg précipitent plus vite ; pas d'hydrolyse.",
  "Below about pH 3 the free acid (311 mg/L) drops out of the amine solution.":
    "Sous pH 3 environ, l'acide libre (311 mg/L) précipite de la solution d'amine.",
  "No antagonism at 600 mg/L as CaCO3.": "Pas d'antagonisme à 600 mg/L en CaCO3.",
  "Hydrolysis takes days.": "L'hydrolyse prend des jours.",
  "Sources disagree: one states no antagonism, handbooks warn of calcium and magnesium salts falling out.":
    "Sources en désaccord : l'une ne voit pas d'antagonisme, des manuels redoutent des sels de calcium et magnésium qui précipitent.",
  "Sources disagree.": "Les sources divergent.",
  "Acid precipitates below about pH 3.5 in strong solutions.":
    "L'acide précipite sous pH 3,5 environ en solution forte.",
  "Water-soluble auxin premixes antagonised at 600 mg/L as CaCO3.":
    "Mélanges d'auxines solubles antagonisés à 600 mg/L en CaCO3.",
  "Free acid precipitates below about pH 3.5.": "L'acide libre précipite sous pH 3,5 environ.",
  "400-800 mg/L as CaCO3 lowered control with glyphosate; alone, cations did not move horseweed control.":
    "400 à 800 mg/L en CaCO3 ont réduit l'efficacité avec le glyphosate. Seul : cations sans effet sur la vergerette du Canada.",
  "pH 9 below pH 4 in mixture with glyphosate.": "pH 9 moins bon que pH 4 en mélange avec le glyphosate.",
  "Below pH 5 volatilisation as the free acid rises: do not acidify.":
    "Sous pH 5, la volatilisation en acide libre augmente : ne pas acidifier.",
  "Listed among affected weak acids.": "Cité parmi les acides faibles touchés.",
  "Listed among affected weak acids; no number found.":
    "Cité parmi les acides faibles touchés ; pas de chiffre trouvé.",
  "Free acid 500 mg/L can precipitate below pH 3-4.":
    "L'acide libre, 500 mg/L, peut précipiter sous pH 3 à 4.",
  "Calcium sulfate water did not reduce efficacy.":
    "L'eau au sulfate de calcium n'a pas réduit l'efficacité.",
  "From about 500 mg/L of bicarbonate, with sodium; 1 % ammonium sulfate cures it.":
    "Dès 500 mg/L de bicarbonate environ, avec sodium ; 1 % de sulfate d'ammonium y remédie.",
  "Through bicarbonate and sodium rather than pH itself.":
    "Par le bicarbonate et le sodium plutôt que par le pH même.",
  "Acid-catalysed degradation; keep above pH 5 and do not store.":
    "Dégradation catalysée par l'acide ; rester au-dessus de pH 5, ne pas garder.",
  "Sodium salts.": "Sels de sodium.",
  "From about 500 mg/L of bicarbonate, with sodium.": "Dès 500 mg/L de bicarbonate environ, avec sodium.",
  "Via bicarbonate.": "Par le bicarbonate.",
  "Half-life about 9 d at pH 5.": "Demi-vie d'environ 9 jours à pH 5.",
  "Half-life 50 d at pH 5, faster below; solubility falls.":
    "Demi-vie de 50 jours à pH 5, plus courte en dessous ; la solubilité baisse.",
  "Half-life under a day at pH 5.": "Demi-vie de moins d'un jour à pH 5.",
  "0-620 mg/L as CaCO3 made no difference.": "0 à 620 mg/L en CaCO3 n'ont rien changé.",
  "pH 5.2-9.0 fine if sprayed the same day.": "pH 5,2 à 9,0 convient si pulvérisé le jour même.",
  "At pH 4 it does not dissolve: up to 56 % less control than at pH 7.7.":
    "À pH 4 il ne se dissout pas : jusqu'à 56 % d'efficacité en moins qu'à pH 7,7.",
  "Half-life 19 h at pH 8, about 12 h at pH 9.": "Demi-vie de 19 h à pH 8, environ 12 h à pH 9.",
  "Best at pH 5-7.": "Au mieux entre pH 5 et 7.",
  "3 h to 1 day at pH 9, by source; days to weeks at pH 7.":
    "3 h à 1 jour à pH 9 selon la source ; jours à semaines à pH 7.",
  "Dissolved: half-life 10 h at pH 7, 12 minutes at pH 9; as a suspension far longer.":
    "Dissous : demi-vie de 10 h à pH 7, 12 minutes à pH 9 ; bien plus en suspension.",
  "Buffer to 5-5.5.": "Tamponner entre 5 et 5,5.",
  "Dissolved: half-life 8 to 12 h at pH 7, 10 minutes at pH 8, 2 to 4 minutes at pH 9.":
    "Dissous : demi-vie 8-12 h à pH 7, 10 minutes à pH 8, 2-4 minutes à pH 9.",
  "pH 5-6 recommended.": "pH 5 à 6 conseillé.",
  "Buffering or lime lowers injury.": "Un tampon ou de la chaux réduit les dégâts.",
  "Acid sets copper ions free, which burn leaves; labels often ask for pH 6 to 6.5 at least.":
    "L'acide libère des ions cuivre, qui brûlent les feuilles ; l'étiquette demande souvent pH 6 à 6,5 au moins.",
  "Listed with the weak acids, above 150 mg/L as CaCO3.":
    "Cité avec les acides faibles, au-dessus de 150 mg/L en CaCO3.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate by the cation equation restored it.":
    "Antagonisé par Ca et Mg, de 500 à 1000 mg/L ; le sulfate d'ammonium selon la formule des cations l'a rétabli.",
  "A weak acid; no threshold was found.": "Un acide faible ; aucun seuil trouvé.",
  "Acid form 430 mg/L precipitates in strongly acid mixes.":
    "La forme acide, 430 mg/L, précipite en mélange très acide.",
  "Its salts behave like other weak acids; no threshold was found.":
    "Ses sels se comportent comme les autres acides faibles ; aucun seuil trouvé.",
  "An ester is not affected, as shown for 2,4-D esters.":
    "Un ester n'est pas touché, comme montré pour les esters de 2,4-D.",
  "Half-life about 12 h at pH 9.": "Demi-vie d'environ 12 h à pH 9.",
  "An ester: the emulsion is the question, not the binding.":
    "Un ester : c'est l'émulsion qui compte, non la liaison.",
  "Its ester takes days to hydrolyse at pH 9.": "Son ester met des jours à s'hydrolyser à pH 9.",
  "Octanoate half-life about 1.7 d at pH 9.": "Octanoate : demi-vie d'environ 1,7 jours à pH 9.",
  "Ester half-life about a day at pH 9.": "Ester : demi-vie d'environ un jour à pH 9.",
  "Half-life below a day at pH 9.": "Demi-vie de moins d'un jour à pH 9.",
  "Calcium sulfate water had no effect.": "L'eau au sulfate de calcium n'a eu aucun effet.",
  "Sodium bicarbonate trials showed loss only for sethoxydim and clethodim.":
    "Les essais au bicarbonate de sodium n'ont montré de perte que pour séthoxydime et cléthodime.",
  "Half-life of hours to a day at pH 9.": "Demi-vie de quelques heures à un jour à pH 9.",
  "Half-life about 7 h at pH 9.": "Demi-vie d'environ 7 h à pH 9.",
  "Calcium or magnesium carbonate at 0.5 g/L halved its potency in pots.":
    "Le carbonate de calcium ou de magnésium à 0,5 g/L a réduit de moitié son efficacité en pots.",
  "Iron carbonate at 0.5 g/L: relative potency 0.47 in pots.":
    "Carbonate de fer à 0,5 g/L : efficacité relative 0,47 en pots.",
  "Sodium or potassium carbonate at 0.5 g/L: relative potency about 0.67 in pots.":
    "Carbonate de sodium ou de potassium à 0,5 g/L : efficacité relative 0,67 environ en pots.",
  "By analogy with imazethapyr, not measured.": "Par analogie avec l'imazéthapyr, non mesuré.",
  "Loss with up to 600 mg/L of sodium bicarbonate; ammonium nitrate recovers it.":
    "Perte avec jusqu'à 600 mg/L de bicarbonate de sodium ; le nitrate d'ammonium la rattrape.",
  "Poorly soluble below its pKa and hydrolyses on standing; raising the pH dissolved it and raised activity.":
    "Peu soluble sous son pKa et s'hydrolyse au repos ; relever le pH l'a dissous et a accru l'efficacité.",
  "Half-life about 7 h at pH 9: spray the same day, do not raise pH.":
    "Demi-vie d'environ 7 h à pH 9 : pulvériser le jour même, ne pas relever le pH.",
  "Half-life 4.6 d at pH 5.": "Demi-vie de 4,6 jours à pH 5.",
  "The ester hydrolyses slowly at pH 9.": "L'ester s'hydrolyse lentement à pH 9.",
  "Half-life 4.3 days at pH 5, shorter below.": "Demi-vie de 4,3 jours à pH 5, plus courte en dessous.",
  "18-28 points less at 1000 mg/L; authors advise below 200 mg/L.":
    "18 à 28 points de moins à 1000 mg/L ; les auteurs conseillent moins de 200 mg/L.",
  "pH 6.5 better than {pH}.": "pH 6,5 meilleur que {pH}.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate restored it.":
    "Antagonisé par Ca et Mg, de 500 à 1000 mg/L ; le sulfate d'ammonium l'a rétabli.",
  "Non-ionic at spray pH; hard water can flocculate some suspensions.":
    "Non ionique au pH de la bouillie ; l'eau dure peut floculer certaines suspensions.",
  "Emulsion quality only.": "Seulement la qualité de l'émulsion.",
  "Held strongly by soil.": "Fortement retenu par le sol.",
  "A permanent cation: no complexes.": "Cation permanent : pas de complexes.",
  "Up to about pH 9.": "Jusqu'à pH 9 environ.",
  "Any visible clay: 100 mg/L of montmorillonite can hold about 8 mg/L.":
    "Toute argile visible : 100 mg/L de montmorillonite peuvent retenir environ 8 mg/L.",
  "Readily hydrolysed in alkaline solution (no rate given).":
    "Vite hydrolysé en solution alcaline (vitesse non donnée).",
  "Any visible clay.": "Toute argile visible.",
  "Half-life about 15-20 min at pH 9, one day at pH 7: buffer to 5-7 and spray at once.":
    "Demi-vie de 15-20 min environ à pH 9, un jour à pH 7. Tamponner entre 5 et 7 et pulvériser aussitôt.",
  "Iron catalyses decomposition in concentrates.": "Le fer catalyse la décomposition dans les concentrés.",
  "Half-life of days at pH 9; the printed 48 minutes is not borne out.":
    "Demi-vie de plusieurs jours à pH 9 ; les 48 minutes imprimées ne se confirment pas.",
  "Weeks even at pH 9; formulated spray lost nothing measurable in 48 h.":
    "Des semaines même à pH 9 ; la bouillie formulée n'a rien perdu de mesurable en 48 h.",
  "18 d at pH 9; fine within a spray day.": "18 jours à pH 9 ; convient dans la journée.",
  "37 d at pH 9.": "37 jours à pH 9.",
  "About 9 d at pH 9; stable at pH 5-7.": "Environ 9 jours à pH 9 ; stable entre pH 5 et 7.",
  "Stable at pH 5-7.": "Stable entre pH 5 et 7.",
  "Held very strongly by soil.": "Très fortement retenu par le sol.",
  "2.5 d at pH 9.": "2,5 jours à pH 9.",
  "200 d at pH 9.": "200 jours à pH 9.",
  "Below pH 6 more of it dissolves: efficacy may fall.":
    "Sous pH 6 il s'en dissout plus : l'efficacité peut baisser.",
  "Over 200 d at pH 9.": "Plus de 200 jours à pH 9.",
  "Stable for a spray day at pH 9.": "Stable une journée de traitement à pH 9.",
  "Slow at pH 9 and 45 C only.": "Lent, seulement à pH 9 et 45 °C.",
  "Iron and copper trade places with its metals: it discolours.":
    "Fer et cuivre prennent la place de ses métaux : il change de couleur.",
  "About 1 d at any pH; use within the day.": "Environ 1 jour à tout pH ; utiliser dans la journée.",
  "Least stable in acid water; keep at pH 6-8.": "Le moins stable en eau acide ; garder entre pH 6 et 8.",
  "No hydrolysis at pH 7 or below; weeks at pH 9.": "Pas d'hydrolyse à pH 7 ou moins ; des semaines à pH 9.",
  "Half-life about 20 minutes at pH 9, days at pH 7.":
    "Demi-vie d'environ 20 minutes à pH 9, de jours à pH 7.",
  "About 17 h at pH 9 (forms carbendazim, still active).":
    "Environ 17 h à pH 9 (forme du carbendazime, encore actif).",
  "Chemically stable at spray pH; aluminium hydroxide can flocculate when the solution is neutralised.":
    "Chimiquement stable au pH de la bouillie ; de l'hydroxyde d'aluminium peut floculer si on neutralise la solution.",
  "Solution is itself acid, pH 3-4.": "La solution est elle-même acide, pH 3 à 4.",
  "Through alkalinity only.": "Seulement par l'alcalinité.",
  "300 against 50 mg/L of alkalinity lowered branching in bedding plants.":
    "300 contre 50 mg/L d'alcalinité ont réduit la ramification de plantes à massif.",
  "Ethylene release begins above about pH 3.5; half-life of days at pH 7 and above.":
    "Le dégagement d'éthylène commence au-dessus de pH 3,5 environ ; demi-vie de jours à pH 7 et plus.",
  "Cation exchange on clay.": "Échange de cations sur l'argile.",
};
