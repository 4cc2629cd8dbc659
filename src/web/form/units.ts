/** Units a field offers first; any other that the engine reads may be typed into its box. */
export const UNITS = {
  strength: ["g/L", "g/L ae", "g/L salt", "g/kg", "g/kg ae", "% w/w", "lb/US gal", "lb/US gal ae"],
  rate: ["L/ha", "kg/ha", "g/ha", "fl oz/ac", "pt/ac", "qt/ac", "lb/ac"],
  price: ["/L", "/kg"],
  dose: ["kg/100 L", "L/100 L", "g/L", "% w/v", "% v/v", "lb/100 US gal"],
  density: ["kg/L", "g/mL"],
  waterPrice: ["/m3", "/L"],
  volume: ["L", "US gal", "imp gal"],
  area: ["ha", "ac"],
  temperature: ["°C", "°F"],
  time: ["h", "min", "d"],
} as const;
