import type { Phrases } from "../phrases.ts";

/** From where on a water harms an active, as published. */
export const THRESHOLDS: Phrases = {
  "From about 150 to 350 mg/L as CaCO3 at low rates, 700 at high ones; the computed loss depends on rate, volume and pH.":
    "Ab etwa 150 bis 350 mg/L als CaCO3 bei niedriger Aufwandmenge, 700 bei hoher. Der berechnete Verlust hängt von Aufwandmenge, Wassermenge und pH ab.",
  "Iron(III) is bound one to one: each mg/L can hold about 3 mg/L of glyphosate.":
    "Eisen(III) bindet eins zu eins: Jedes mg/L kann etwa 3 mg/L Glyphosat binden.",
  "Significant loss with NaHCO3 up to 600 mg/L in pot trials.":
    "Deutlicher Verlust mit NaHCO3 bis 600 mg/L im Topfversuch.",
  "Control at pH 9 below that at pH 4 (6 points or more, with dicamba).":
    "Wirkung bei pH 9 unter der bei pH 4 (6 Prozentpunkte oder mehr, mit Dicamba).",
  "Sodium above about 300 mg/L.": "Natrium über etwa 300 mg/L.",
  "Visibly muddy water.": "Sichtbar trübes Wasser.",
  "Linear, about 20 points less control at 1000 mg/L as CaCO3.":
    "Geradlinig, etwa 20 Prozentpunkte weniger Wirkung bei 1000 mg/L als CaCO3.",
  "Each mg/L of iron can hold at most 3.2 mg/L of the acid, and above pH 5 iron goes to rust first.":
    "Jedes mg/L Eisen kann höchstens 3,2 mg/L der Säure binden, und über pH 5 wird Eisen zuerst zu Rost.",
  "8-17 points less at pH 9 than pH 4.": "8–17 Prozentpunkte weniger bei pH 9 als bei pH 4.",
  "pH 4 was best.": "pH 4 war am besten.",
  "Control falls from about 390-420 mg/L as CaCO3; near useless above 600.":
    "Die Wirkung sinkt ab etwa 390–420 mg/L als CaCO3; über 600 fast nutzlos.",
  "Iron throws it out, manganese feeds antagonise.": "Eisen fällt es aus, Mangandünger mindern die Wirkung.",
  "500 mg/L HCO3; ammonium sulfate only partly corrects.":
    "500 mg/L HCO3; Ammoniumsulfat behebt es nur zum Teil.",
  "Ca and Mg salts precipitate more readily; no hydrolysis.":
    "Ca- und Mg-Salze fallen leichter aus; keine Hydrolyse.",
  "Below about pH 3 the free acid (311 mg/L) drops out of the amine solution.":
    "Unter etwa pH 3 fällt die freie Säure (311 mg/L) aus der Aminlösung aus.",
  "No antagonism at 600 mg/L as CaCO3.": "Keine Minderung der Wirkung bei 600 mg/L als CaCO3.",
  "Hydrolysis takes days.": "Die Hydrolyse dauert Tage.",
  "Sources disagree: one states no antagonism, handbooks warn of calcium and magnesium salts falling out.":
    "Quellen widersprechen sich: Eine sagt keine Minderung, Handbücher warnen vor ausfallenden Calcium- und Magnesiumsalzen.",
  "Sources disagree.": "Die Quellen widersprechen sich.",
  "Acid precipitates below about pH 3.5 in strong solutions.":
    "In starken Lösungen fällt die Säure unter etwa pH 3,5 aus.",
  "Water-soluble auxin premixes antagonised at 600 mg/L as CaCO3.":
    "Wasserlösliche Auxin-Fertigmischungen bei 600 mg/L als CaCO3 gemindert.",
  "Free acid precipitates below about pH 3.5.": "Freie Säure fällt unter etwa pH 3,5 aus.",
  "400-800 mg/L as CaCO3 lowered control with glyphosate; alone, cations did not move horseweed control.":
    "400–800 mg/L als CaCO3 senkten die Wirkung mit Glyphosat; allein änderten Kationen gegen Kanadisches Berufkraut nichts.",
  "pH 9 below pH 4 in mixture with glyphosate.": "pH 9 schlechter als pH 4 in Mischung mit Glyphosat.",
  "Below pH 5 volatilisation as the free acid rises: do not acidify.":
    "Unter pH 5 verdampft mehr als freie Säure: nicht ansäuern.",
  "Listed among affected weak acids.": "Unter den betroffenen schwachen Säuren genannt.",
  "Listed among affected weak acids; no number found.":
    "Unter den betroffenen schwachen Säuren genannt; keine Zahl gefunden.",
  "Free acid 500 mg/L can precipitate below pH 3-4.": "Freie Säure, 500 mg/L, kann unter pH 3–4 ausfallen.",
  "Calcium sulfate water did not reduce efficacy.": "Wasser mit Calciumsulfat minderte die Wirkung nicht.",
  "From about 500 mg/L of bicarbonate, with sodium; 1 % ammonium sulfate cures it.":
    "Ab etwa 500 mg/L Hydrogencarbonat, mit Natrium; 1 % Ammoniumsulfat behebt es.",
  "Through bicarbonate and sodium rather than pH itself.":
    "Durch Hydrogencarbonat und Natrium, weniger durch den pH selbst.",
  "Acid-catalysed degradation; keep above pH 5 and do not store.":
    "Säure beschleunigt den Zerfall; über pH 5 halten und nicht stehen lassen.",
  "Sodium salts.": "Natriumsalze.",
  "From about 500 mg/L of bicarbonate, with sodium.": "Ab etwa 500 mg/L Hydrogencarbonat, mit Natrium.",
  "Via bicarbonate.": "Durch Hydrogencarbonat.",
  "Half-life about 9 d at pH 5.": "Halbwertszeit etwa 9 Tage bei pH 5.",
  "Half-life 50 d at pH 5, faster below; solubility falls.":
    "Halbwertszeit 50 Tage bei pH 5, darunter kürzer; die Löslichkeit sinkt.",
  "Half-life under a day at pH 5.": "Halbwertszeit unter einem Tag bei pH 5.",
  "0-620 mg/L as CaCO3 made no difference.": "0–620 mg/L als CaCO3 änderten nichts.",
  "pH 5.2-9.0 fine if sprayed the same day.": "pH 5,2–9,0 gut, wenn am selben Tag gespritzt.",
  "At pH 4 it does not dissolve: up to 56 % less control than at pH 7.7.":
    "Bei pH 4 löst es sich nicht: bis zu 56 % weniger Wirkung als bei pH 7,7.",
  "Half-life 19 h at pH 8, about 12 h at pH 9.": "Halbwertszeit 19 h bei pH 8, etwa 12 h bei pH 9.",
  "Best at pH 5-7.": "Am besten bei pH 5–7.",
  "3 h to 1 day at pH 9, by source; days to weeks at pH 7.":
    "3 h bis 1 Tag bei pH 9, je nach Quelle; Tage bis Wochen bei pH 7.",
  "Dissolved: half-life 10 h at pH 7, 12 minutes at pH 9; as a suspension far longer.":
    "Gelöst: Halbwertszeit 10 h bei pH 7, 12 Minuten bei pH 9; als Suspension weit länger.",
  "Buffer to 5-5.5.": "Auf 5–5,5 puffern.",
  "Dissolved: half-life 8 to 12 h at pH 7, 10 minutes at pH 8, 2 to 4 minutes at pH 9.":
    "Gelöst: Halbwertszeit 8–12 h bei pH 7, 10 Minuten bei pH 8, 2–4 Minuten bei pH 9.",
  "pH 5-6 recommended.": "pH 5–6 empfohlen.",
  "Buffering or lime lowers injury.": "Puffern oder Kalk mindert Schäden.",
  "Acid sets copper ions free, which burn leaves; labels often ask for pH 6 to 6.5 at least.":
    "Säure setzt Kupferionen frei, die Blätter verbrennen; Etiketten verlangen oft mindestens pH 6 bis 6,5.",
  "Listed with the weak acids, above 150 mg/L as CaCO3.":
    "Bei den schwachen Säuren genannt, über 150 mg/L als CaCO3.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate by the cation equation restored it.":
    "Durch Ca und Mg mit 500–1000 mg/L gemindert; Ammoniumsulfat nach der Kationenformel stellte die Wirkung wieder her.",
  "A weak acid; no threshold was found.": "Eine schwache Säure; kein Schwellenwert gefunden.",
  "Acid form 430 mg/L precipitates in strongly acid mixes.":
    "Die Säureform, 430 mg/L, fällt in stark sauren Mischungen aus.",
  "Its salts behave like other weak acids; no threshold was found.":
    "Seine Salze verhalten sich wie andere schwache Säuren; kein Schwellenwert gefunden.",
  "An ester is not affected, as shown for 2,4-D esters.":
    "Ein Ester ist nicht betroffen, wie an 2,4-D-Estern gezeigt.",
  "Half-life about 12 h at pH 9.": "Halbwertszeit etwa 12 h bei pH 9.",
  "An ester: the emulsion is the question, not the binding.":
    "Ein Ester: Es geht um die Emulsion, nicht um die Bindung.",
  "Its ester takes days to hydrolyse at pH 9.": "Sein Ester braucht bei pH 9 Tage zur Hydrolyse.",
  "Octanoate half-life about 1.7 d at pH 9.": "Octanoat: Halbwertszeit etwa 1,7 Tage bei pH 9.",
  "Ester half-life about a day at pH 9.": "Ester: Halbwertszeit etwa ein Tag bei pH 9.",
  "Half-life below a day at pH 9.": "Halbwertszeit unter einem Tag bei pH 9.",
  "Calcium sulfate water had no effect.": "Wasser mit Calciumsulfat hatte keinen Einfluss.",
  "Sodium bicarbonate trials showed loss only for sethoxydim and clethodim.":
    "Versuche mit Natriumhydrogencarbonat zeigten nur bei Sethoxydim und Clethodim Verluste.",
  "Half-life of hours to a day at pH 9.": "Halbwertszeit Stunden bis ein Tag bei pH 9.",
  "Half-life about 7 h at pH 9.": "Halbwertszeit etwa 7 h bei pH 9.",
  "Calcium or magnesium carbonate at 0.5 g/L halved its potency in pots.":
    "Calcium- oder Magnesiumcarbonat mit 0,5 g/L halbierte die Wirkstärke im Topfversuch.",
  "Iron carbonate at 0.5 g/L: relative potency 0.47 in pots.":
    "Eisencarbonat mit 0,5 g/L: relative Wirkstärke 0,47 im Topfversuch.",
  "Sodium or potassium carbonate at 0.5 g/L: relative potency about 0.67 in pots.":
    "Natrium- oder Kaliumcarbonat mit 0,5 g/L: relative Wirkstärke etwa 0,67 im Topfversuch.",
  "By analogy with imazethapyr, not measured.": "In Analogie zu Imazethapyr, nicht gemessen.",
  "Loss with up to 600 mg/L of sodium bicarbonate; ammonium nitrate recovers it.":
    "Verlust mit bis zu 600 mg/L Natriumhydrogencarbonat; Ammoniumnitrat stellt die Wirkung wieder her.",
  "Poorly soluble below its pKa and hydrolyses on standing; raising the pH dissolved it and raised activity.":
    "Unter seinem pKa schlecht löslich, hydrolysiert beim Stehen; ein höherer pH löste es und hob die Wirkung.",
  "Half-life about 7 h at pH 9: spray the same day, do not raise pH.":
    "Halbwertszeit etwa 7 h bei pH 9: am selben Tag spritzen, pH nicht heben.",
  "Half-life 4.6 d at pH 5.": "Halbwertszeit 4,6 Tage bei pH 5.",
  "The ester hydrolyses slowly at pH 9.": "Der Ester hydrolysiert bei pH 9 langsam.",
  "Half-life 4.3 days at pH 5, shorter below.": "Halbwertszeit 4,3 Tage bei pH 5, darunter kürzer.",
  "18-28 points less at 1000 mg/L; authors advise below 200 mg/L.":
    "18–28 Prozentpunkte weniger bei 1000 mg/L; die Autoren raten zu unter 200 mg/L.",
  "pH 6.5 better than {pH}.": "pH 6,5 besser als {pH}.",
  "Antagonised by Ca and Mg at 500-1000 mg/L; ammonium sulfate restored it.":
    "Durch Ca und Mg mit 500–1000 mg/L gemindert; Ammoniumsulfat stellte die Wirkung wieder her.",
  "Non-ionic at spray pH; hard water can flocculate some suspensions.":
    "Beim pH der Spritzbrühe nicht ionisch; hartes Wasser kann manche Suspensionen ausflocken.",
  "Emulsion quality only.": "Nur die Güte der Emulsion.",
  "Held strongly by soil.": "Vom Boden stark gebunden.",
  "A permanent cation: no complexes.": "Ein beständiges Kation: keine Komplexe.",
  "Up to about pH 9.": "Bis etwa pH 9.",
  "Any visible clay: 100 mg/L of montmorillonite can hold about 8 mg/L.":
    "Jeder sichtbare Ton: 100 mg/L Montmorillonit können etwa 8 mg/L binden.",
  "Readily hydrolysed in alkaline solution (no rate given).":
    "In alkalischer Lösung leicht hydrolysiert (keine Geschwindigkeit angegeben).",
  "Any visible clay.": "Jeder sichtbare Ton.",
  "Half-life about 15-20 min at pH 9, one day at pH 7: buffer to 5-7 and spray at once.":
    "Halbwertszeit etwa 15–20 min bei pH 9, ein Tag bei pH 7: auf 5–7 puffern und sofort spritzen.",
  "Iron catalyses decomposition in concentrates.": "Eisen beschleunigt den Zerfall in Konzentraten.",
  "Half-life of days at pH 9; the printed 48 minutes is not borne out.":
    "Halbwertszeit Tage bei pH 9; die gedruckten 48 Minuten bestätigen sich nicht.",
  "Weeks even at pH 9; formulated spray lost nothing measurable in 48 h.":
    "Wochen selbst bei pH 9; die Brühe des Handelsprodukts verlor in 48 h nichts Messbares.",
  "18 d at pH 9; fine within a spray day.": "18 Tage bei pH 9; gut innerhalb eines Spritztages.",
  "37 d at pH 9.": "37 Tage bei pH 9.",
  "About 9 d at pH 9; stable at pH 5-7.": "Etwa 9 Tage bei pH 9; stabil bei pH 5–7.",
  "Stable at pH 5-7.": "Stabil bei pH 5–7.",
  "Held very strongly by soil.": "Vom Boden sehr stark gebunden.",
  "2.5 d at pH 9.": "2,5 Tage bei pH 9.",
  "200 d at pH 9.": "200 Tage bei pH 9.",
  "Below pH 6 more of it dissolves: efficacy may fall.":
    "Unter pH 6 löst sich mehr davon: die Wirkung kann sinken.",
  "Over 200 d at pH 9.": "Über 200 Tage bei pH 9.",
  "Stable for a spray day at pH 9.": "Bei pH 9 über einen Spritztag stabil.",
  "Slow at pH 9 and 45 C only.": "Nur bei pH 9 und 45 °C, langsam.",
  "Iron and copper trade places with its metals: it discolours.":
    "Eisen und Kupfer tauschen mit seinen Metallen: Es verfärbt sich.",
  "About 1 d at any pH; use within the day.": "Etwa 1 Tag bei jedem pH; am selben Tag verbrauchen.",
  "Least stable in acid water; keep at pH 6-8.": "In saurem Wasser am wenigsten stabil; bei pH 6–8 halten.",
  "No hydrolysis at pH 7 or below; weeks at pH 9.":
    "Keine Hydrolyse bei pH 7 oder darunter; Wochen bei pH 9.",
  "Half-life about 20 minutes at pH 9, days at pH 7.":
    "Halbwertszeit etwa 20 Minuten bei pH 9, Tage bei pH 7.",
  "About 17 h at pH 9 (forms carbendazim, still active).":
    "Etwa 17 h bei pH 9 (bildet Carbendazim, noch wirksam).",
  "Chemically stable at spray pH; aluminium hydroxide can flocculate when the solution is neutralised.":
    "Beim pH der Spritzbrühe chemisch stabil; wird die Lösung neutralisiert, kann Aluminiumhydroxid ausflocken.",
  "Solution is itself acid, pH 3-4.": "Die Lösung selbst ist sauer, pH 3–4.",
  "Through alkalinity only.": "Nur durch die Alkalinität.",
  "300 against 50 mg/L of alkalinity lowered branching in bedding plants.":
    "300 statt 50 mg/L Alkalinität minderten die Verzweigung von Beetpflanzen.",
  "Ethylene release begins above about pH 3.5; half-life of days at pH 7 and above.":
    "Über etwa pH 3,5 beginnt die Abgabe von Ethylen; Halbwertszeit Tage bei pH 7 und darüber.",
  "Cation exchange on clay.": "Kationenaustausch am Ton.",
};
