//! What it needs and what it may have.

use super::Said;
use tussock_core::limits::{
    AllowanceReason, Amount, Basis, CapVerdict, DonkeyLossVerdict, EnergyVerdict, Finding,
    LimitsError, MealLimit, MealVerdict, Nutrient, NutrientUnit, Offer, RatioVerdict,
    RestrictionBar, Review, UpperVerdict, VetListReason, WaterNeed, WaterWeather,
};

/// Words for needs and limits.
pub trait LimitsWords {
    /// Why the level of dry matter is what it is.
    fn allowance_reason(&self, reason: AllowanceReason) -> Said;
    /// What stands in the way of a restriction, and what would mend it.
    fn restriction_bar(&self, bar: &RestrictionBar) -> Said;
    /// Why an animal is on the vet's list: "on pain relief".
    fn vet_list_reason(&self, reason: VetListReason) -> String;
    /// How forage is given.
    fn offer(&self, offer: Offer) -> &'static str;
    /// Which weight a percentage is of.
    fn weight_basis(&self, basis: Basis) -> &'static str;
    /// How a day's energy stands.
    fn energy_verdict(&self, verdict: EnergyVerdict) -> Said;
    /// What to know beside the needs.
    fn needs_finding(&self, finding: Finding) -> Said;
    /// "Copper".
    fn nutrient(&self, nutrient: Nutrient) -> &'static str;
    /// Several of them: "copper, zinc and selenium".
    fn nutrients(&self, nutrients: &[Nutrient]) -> String;
    /// "mg".
    fn nutrient_unit(&self, unit: NutrientUnit) -> &'static str;
    /// An amount of a nutrient in its unit: "120 mg".
    fn amount(&self, nutrient: Nutrient, amount: Amount) -> String;
    /// The same, with as many decimals as keep it on its side of another.
    fn amount_beside(&self, nutrient: Nutrient, amount: Amount, limit: Amount) -> String;
    /// How straw or lucerne stands to its cap.
    fn cap_verdict(&self, verdict: CapVerdict) -> String;
    /// How fast a donkey loses.
    fn donkey_loss(&self, verdict: DonkeyLossVerdict) -> Said;
    /// What one bucket meal may hold.
    fn meal_limit(&self, limit: &MealLimit) -> String;
    /// How a bucket meal stands.
    fn meal_verdict(&self, verdict: MealVerdict) -> String;
    /// How an amount stands to its ceiling.
    fn upper_verdict(&self, nutrient: Nutrient, verdict: UpperVerdict) -> String;
    /// How a ratio of two minerals stands.
    fn ratio_verdict(&self, verdict: RatioVerdict) -> String;
    /// When a plan is reviewed.
    fn review(&self, review: Review) -> String;
    /// How much water must be there.
    fn water(&self, need: &WaterNeed) -> Said;
    /// "About 20 degrees".
    fn water_weather(&self, weather: WaterWeather) -> &'static str;
    /// Why an input was refused.
    fn limits_error(&self, error: &LimitsError) -> String;
}
