import type { Phrases } from "../phrases.ts";

/** Cautions that hold at every filling or with a kind of conditioner. */
export const CAUTIONS: Phrases = {
  "The label in hand and local law win over anything here.":
    "Das Etikett in der Hand und das geltende Recht gehen allem hier vor.",
  "A mix may be forbidden or need permission where you are.":
    "Eine Mischung kann bei Ihnen verboten oder genehmigungspflichtig sein.",
  "Handling concentrates is the riskiest minute: label gear, and never less than goggles, chemical-proof gloves, apron and boots.":
    "Der Umgang mit Konzentrat ist die gefährlichste Minute: Schutzkleidung laut Etikett, mindestens Schutzbrille, chemikalienfeste Handschuhe, Schürze und Stiefel.",
  "Water in first.": "Zuerst Wasser.",
  "Keep the hose end at least 15 cm above the rim, 30 m from the well.":
    "Das Schlauchende mindestens 15 cm über dem Rand halten, 30 m vom Brunnen entfernt.",
  "Never leave a filling tank.": "Beim Füllen nie weggehen.",
  "Fill on level, lit, aired ground away from drains and animals, spill kit and first aid at hand.":
    "Auf ebenem, hellem, luftigem Platz füllen, fern von Abläufen und Tieren, Bindemittel und Erste Hilfe bereit.",
  "Acid into water, slowly, stirring; never water into acid.":
    "Säure ins Wasser, langsam und unter Rühren; nie Wasser in Säure.",
  "Running water and an eye bottle within reach.": "Fließendes Wasser und Augenspülflasche in Reichweite.",
  "Never acid with bleach, sulfide, lime sulfur, cyanide or thiosulfate: poison gas.":
    "Nie Säure mit Chlorbleiche, Sulfid, Schwefelkalk, Cyanid oder Thiosulfat: Giftgas.",
  "Rinse fully between cleaning and filling.": "Zwischen Reinigen und Füllen gründlich spülen.",
  "Acid eats zinc, steel and aluminium and gives hydrogen: plastic gear for concentrates, rinse after.":
    "Säure greift Zink, Stahl und Aluminium an, Wasserstoff entsteht: Konzentrate nur in Kunststoff, danach spülen.",
  "Never ammonium with bleach (chloramine gas) or with lime, caustic or wood ash (ammonia gas).":
    "Nie Ammonium mit Chlorbleiche (Chloramingas) oder mit Kalk, Lauge oder Holzasche (Ammoniakgas).",
  "Ammonium salts attack brass, copper and zinc and rust steel: rinse the machine the same day.":
    "Ammoniumsalze greifen Messing, Kupfer und Zink an, Stahl rostet: Gerät am selben Tag spülen.",
  "Dry nitrates feed fire: away from fuel, oil, sulfur, sawdust and acids.":
    "Trockene Nitrate nähren Feuer: fern von Kraftstoff, Öl, Schwefel, Sägemehl und Säuren.",
  "Alkaline: goggles and gloves.": "Alkalisch: Schutzbrille und Handschuhe.",
  "Never into a tank that already holds ammonium: ammonia comes off.":
    "Nie in einen Tank, der schon Ammonium enthält: Ammoniak entweicht.",
  "Sequestrants loosen rust and attack zinc, copper and aluminium slowly: rinse the machine the same day.":
    "Komplexbildner lösen Rost und greifen Zink, Kupfer und Aluminium langsam an: Gerät am selben Tag spülen.",
  "Rinse three times with little water and spray it out on the treated field, never into a drain.":
    "Dreimal mit wenig Wasser spülen und auf der behandelten Fläche ausbringen, nie in einen Ablauf.",
  "Splash in the eye: rinse at once for at least 15 minutes and get help.":
    "Spritzer im Auge: sofort mindestens 15 Minuten spülen und Hilfe holen.",
  "{active} is entered by hand: the restrictions of its label are not known here.":
    "{active} ist von Hand eingegeben: Auflagen des Etiketts sind hier nicht bekannt.",
};
