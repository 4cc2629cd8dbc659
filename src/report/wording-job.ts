import type { Wording } from "./wording.ts";

/** Sentences for the job itself: keys, choices, products, conditioners. */
export const JOB_WORDING: Readonly<Record<string, Wording>> = {
  "object-expected": { say: "Keys with values belong here.", mend: "See the example jobs for the form." },
  "list-expected": { say: "A list belongs here.", mend: "Start each entry of the list with a dash." },
  "list-empty": { say: "This list has no entry.", mend: "Add at least one entry." },
  "text-expected": { say: "A text belongs here.", mend: "Put the text between quotes." },
  "text-empty": { say: "This text is empty.", mend: "Write the text, or leave the key out." },
  "yes-or-no-expected": {
    say: "Yes or no belongs here.",
    mend: "Write true or false; leave it out if not known.",
  },
  "key-unknown": { say: "This key has no place here.", mend: "Check the spelling, or take the line out." },
  "key-missing": { say: "This key is needed.", mend: "Add it to the job." },
  "choice-unknown": { say: "This is not one of the choices.", mend: "Use one of the words named." },
  "version-unknown": {
    say: "This version of the job format is not known.",
    mend: "Write “hardstand: 1” at the top.",
  },
  "active-unknown": { say: "No active of this name is in the data.", mend: "Use the ISO common name." },
  "active-in-data": {
    say: "This active is in the data, which know more of it.",
    mend: "Name it in one word, as expected.",
  },
  "own-active-limits": {
    say: "This active is entered by hand; the answer leaves open what was not given.",
    mend: "Add what the safety data sheet tells.",
  },
  "own-active-differs": {
    say: "This name is entered twice with other figures.",
    mend: "Give both the same figures, or two names.",
  },
  "affinity-class-unknown": {
    say: "There is no class of affinity of this name.",
    mend: "Use one of the classes named, or leave it out.",
  },
  "acid-constant-unusable": {
    say: "These are not acid constants.",
    mend: "Write pKa as a number or a list of numbers.",
  },
  "acid-constants-do-not-fit": {
    say: "The number of acid constants does not fit the class of affinity.",
    mend: "Give as many as expected, or leave pKa out.",
  },
  "half-lives-repeat-ph": { say: "Two half-lives stand at one pH.", mend: "Keep one of them." },
  "active-form-unknown": {
    say: "This active has no such salt or ester in the data.",
    mend: "Use one of the forms named.",
  },
  "conditioner-unknown": {
    say: "No conditioner of this name is in the data.",
    mend: "Name the chemistry, not the product.",
  },
  "conditioner-form-unknown": {
    say: "This conditioner is not sold in that form in the data.",
    mend: "Use one of the forms named.",
  },
  "most-rate-below-rate": {
    say: "The highest rate is below the planned one.",
    mend: "Swap the two, or check the label.",
  },
  "water-price-by-mass": {
    say: "A water is bought by volume, not by mass.",
    mend: "Give the price per L or per m3.",
  },
  "water-name-repeated": {
    say: "Each water needs a name of its own.",
    mend: "Add a source to each water, such as Rain tank.",
  },
  "conditioner-repeated": { say: "This conditioner stands in the list twice.", mend: "Keep one of the two." },
  "feed-unknown": {
    say: "No leaf feed of this name is in the data.",
    mend: "Name the salt or chelate, such as manganese sulfate.",
  },
  "feed-not-dissolved": {
    say: "The spray cannot dissolve this much of the feed at its temperature.",
    mend: "Use more water, warmer water or a lower rate.",
  },
  "ingredient-unknown": {
    say: "No chemistry of this name is in the data.",
    mend: "Name the chemistry, or say under “undisclosed” what cannot be counted.",
  },
  "amount-needs-density": {
    say: "An amount per litre needs the density of the product.",
    mend: "Add the density; it stands in section 9 of the safety data sheet.",
  },
  "composition-above-whole": {
    say: "The composition adds up to more than the product.",
    mend: "Check the amounts and their units.",
  },
  "density-unlikely": { say: "No product has this density.", mend: "Give it in kg/L, such as 1.23 kg/L." },
  "label-undisclosed": {
    say: "This label does not disclose enough to compute the product, so it was not tried.",
    mend: "Ask the maker for the chemistries and their amounts.",
  },
  "active-form-not-said": {
    say: "Which salt or ester is not said, so its counter-ion is left out.",
    mend: "Add the form from the label.",
  },
  "strength-basis-assumed": {
    say: "The strength does not say what it counts; the usual basis of this active was taken.",
    mend: "Write “ae” or “salt” behind the strength.",
  },
  "formulation-not-for-water": {
    say: "This type is not mixed with water.",
    mend: "Check the code on the label.",
  },
  "dose-does-not-fit-form": {
    say: "This dose counts volume, but the form sold is a solid.",
    mend: "Give the dose by mass, such as 1 kg/100 L.",
  },
  "strength-needs-form": {
    say: "A strength as salt needs the name of the salt.",
    mend: "Add the form, or give the strength as acid equivalent.",
  },
  "strength-basis-differs": {
    say: "The strength is counted as something this active is not sold as.",
    mend: "Check the label for the basis.",
  },
  "rate-does-not-fit-strength": {
    say: "Rate and strength do not fit: one counts volume, the other mass.",
    mend: "Use L/ha with g/L, or kg/ha with g/kg.",
  },
  "price-does-not-fit-product": {
    say: "The price is for another measure than the product is sold in.",
    mend: "Give the price per L for liquids, per kg for solids.",
  },
  "formulation-unknown": {
    say: "This formulation code is not known.",
    mend: "Use the two letters of the label, such as SL.",
  },
  "value-out-of-range": { say: "No sprayer or field has this.", mend: "Check the number and its unit." },
  "value-unlikely": { say: "This is unlikely.", mend: "Check the number and its unit." },
  "least-above-most": { say: "The least dose is above the most.", mend: "Swap the two, or check the label." },
  "least-volume-above-volume": {
    say: "The least water volume is above the planned one.",
    mend: "Swap the two, or leave the least one out.",
  },
  "reagent-unknown": {
    say: "Nothing of this name is in the data.",
    mend: "Use the chemical name with its hydrate, as on the bottle.",
  },
  "reagent-form-unknown": { say: "It is not in the data in this form.", mend: "Use one of the forms named." },
  "strength-unreadable": {
    say: "This strength could not be read.",
    mend: "Write a number with a unit, such as 1 % w/v.",
  },
  "amount-unreadable": {
    say: "This amount could not be read.",
    mend: "Write a number with a unit, such as 2 mL.",
  },
  "amount-does-not-fit-strength": {
    say: "Amount and strength do not fit: one counts volume, the other mass.",
    mend: "Give both by volume or both by mass.",
  },
  "medium-unreadable": {
    say: "What the stock is kept in could not be read.",
    mend: "Write it as “0.1 mol/L hydrochloric acid”, or leave it out.",
  },
  "length-unreadable": { say: "This length could not be read.", mend: "Write it as 6 cm." },
  "number-unusable": { say: "A number in the range named belongs here.", mend: "Check the figure." },
  "metal-unknown": { say: "This metal is not in the data.", mend: "Use one of the names given." },
  "name-repeated": { say: "This name stands here twice.", mend: "Give each its own name." },
  "colour-unreadable": { say: "This colour could not be read.", mend: "Write it as #7b0246." },
  "design-without-answer": {
    say: "No amounts of these bottles give flasks that differ.",
    mend: "Try another indicator or a stronger stock.",
  },
  "flask-not-computed": { say: "This step could not be computed.", mend: "Check amounts and pH." },
  "water-unknown": {
    say: "This water is not known.",
    mend: "Write “deionised”, or give a water test as in a job.",
  },
};
