/** Two hundred words, dates and numbers as they stand on cask heads; names and places are invented. Four to a line. */
export const LINES: readonly string[] = `
Marrow Lane Perry Cask
Reserve Batch Barrel Filled
Orchard Cellar Cooper Stave
Croze Bilge Chime Quarter
Hogshead Firkin Barrique Puncheon
Oak Chestnut Acacia Cherry
Cider Mead Porter Stout
Sherry Madeira Malmsey Brandy
Single Double Triple Strength
Bottled Drawn Rested Finished
12 March 2021 2086
4 July 2027 1877
30 October 2019 2040
7 January 2031 1968
25 December 2024 1999
1.5.2027 24.12.2025 9.9.2029 31.1.2030
2027-05-01 2026-11-30 2030-02-28 2025-08-15
01/05/27 30/11/26 28/02/30 15/08/25
No 12 No 86
Lot 407 Lot 3951
Cask 1 of 12
Cask 7 of 24
225 litres 60 gallons
58.6 % vol 750
Bramble Hollow Estate Vineyard
Dunmarrow Distillery Old Warehouse
Quillbeck Brewing Company Ltd
Thornapple Press House Row
Alder and Finch Winery
Saltmarsh Bonded Store Nine
Oswin and Beatrix Hale
Edda and Rowan Birk
Golden Wedding Family Feast
Happy Birthday Grandfather Gregor
Welcome Home Aurelia Peck
Forever Yours Odo Bramwell
Best Brewer Anders Quill
Master Blender Dagny Rask
Founded 1794 Rebuilt 1903
Established 1851 Since 1866
Spring Summer Autumn Winter
Monday Tuesday Thursday Sunday
North Barrel Room Four
Upper Gallery Rack 38
Peated Smoked Charred Toasted
Double Barrelled Dark Ale
Apple Pear Plum Quince
Rum Gin Rye Malt
Amber Ruby Tawny Gold
Grand Old Proud Bold
`
  .trim()
  .split('\n');
