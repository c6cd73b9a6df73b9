//! What grows at grass: what each plant does, to whom, when, and what to do.

use crate::words::Said;
use tussock_core::graze::plants::{
    Act, CalciumToOxalate, Endophyte, Growth, Harm, Hazard, Nitrate, PlantId, Region,
    SugarPotential, When, Whom,
};

/// What plants say.
pub trait PlantsWords {
    /// Its common name, with a capital.
    fn plant(&self, plant: PlantId) -> String;
    /// Its scientific name.
    fn scientific(&self, plant: PlantId) -> &'static str;
    /// What manner of plant it is.
    fn growth(&self, growth: Growth) -> &'static str;
    /// What it does.
    fn harm(&self, harm: Harm) -> Said;
    /// What to do.
    fn act(&self, act: Act) -> &'static str;
    /// To whom.
    fn whom(&self, whom: Whom) -> &'static str;
    /// When it is worst.
    fn worst_when(&self, when: When) -> &'static str;
    /// A part of the world.
    fn part_of_world(&self, region: Region) -> &'static str;
    /// What sugar a grass may hold, as a head of a list.
    fn sugar_potential(&self, sugar: SugarPotential) -> &'static str;
    /// A grass that is on the list of what harms, whatever its sugar.
    fn harms_too(&self) -> &'static str;
    /// The same as one word for the source of it.
    fn sugar_word(&self, sugar: SugarPotential) -> &'static str;
    /// How calcium stands to oxalate.
    fn calcium_to_oxalate(&self, found: &CalciumToOxalate) -> Said;
    /// What a test for endophyte says.
    fn endophyte(&self, found: Endophyte) -> Said;
    /// What a test for nitrate says.
    fn nitrate(&self, found: Nitrate) -> Said;
    /// A hazard in one line: to whom and when.
    fn hazard_line(&self, hazard: &Hazard) -> String;
    /// What to do about a hazard, in order.
    fn hazard_acts(&self, hazard: &Hazard) -> Vec<&'static str>;
    /// The sentence of the screen of plants.
    fn plants_sentence(&self) -> &'static str;
    /// The kind of grass is worth less than season, frost and drought.
    fn kind_is_not_all(&self) -> &'static str;
    /// The head over what harms, in these regions.
    fn hazards_head(&self) -> &'static str;
    /// Finds a plant.
    fn find_plant(&self) -> &'static str;
    /// How.
    fn find_plant_hint(&self) -> &'static str;
    /// No region was ticked.
    fn no_region(&self) -> &'static str;
    /// Which regions are ticked.
    fn for_regions(&self, regions: &[Region]) -> String;
    /// The link to tick them.
    fn tick_regions(&self) -> &'static str;
    /// Nothing of that name.
    fn no_such_plant(&self) -> &'static str;
    /// What this list is not.
    fn list_is_not_all(&self) -> &'static str;
}
