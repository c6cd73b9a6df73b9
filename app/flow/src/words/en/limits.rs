//! What it needs and what it may have.

use super::English;
use super::fields::small;
use super::numbers::{between, decimals_of, sized, up_to, up_to_beside};
use crate::words::{AnimalWords, LimitsWords, Said, UnitWords};
use tussock_core::animal::State;
use tussock_core::limits::published::{ENERGY_FLOOR, ENERGY_FLOOR_WITHOUT_VET};
use tussock_core::limits::{
    AllowanceReason, Amount, Basis, CapVerdict, DonkeyLossVerdict, EnergyVerdict, Finding,
    LimitsError, MealLimit, MealVerdict, Nutrient, NutrientUnit, Offer, RatioVerdict,
    RestrictionBar, Review, StageGap, UpperVerdict, VetListReason, WaterNeed, WaterWeather,
};
use tussock_core::units::show::fixed;

impl English {
    /// A part of average maintenance, on its side of a floor.
    fn of_maintenance(share: f64, floor: f64) -> String {
        format!(
            "{} % of what an average animal of its weight needs",
            up_to_beside(share * 100.0, floor * 100.0, 0)
        )
    }
}

impl LimitsWords for English {
    fn allowance_reason(&self, reason: AllowanceReason) -> Said {
        super::allowance::reason(self, reason)
    }

    fn restriction_bar(&self, bar: &RestrictionBar) -> Said {
        super::allowance::bar(self, bar)
    }

    fn vet_list_reason(&self, reason: VetListReason) -> String {
        super::allowance::vet_list(self, reason)
    }

    fn offer(&self, offer: Offer) -> &'static str {
        match offer {
            Offer::Measured => "Weighed out",
            Offer::AtLeast => "At least this; forage may always be in front of it",
        }
    }

    fn weight_basis(&self, basis: Basis) -> &'static str {
        match basis {
            Basis::CurrentWeight => "of its weight now",
            Basis::TargetWeight => "of its target weight",
        }
    }

    fn energy_verdict(&self, verdict: EnergyVerdict) -> Said {
        match verdict {
            EnergyVerdict::Enough { share } => Said::plain(format!(
                "Energy is above its floor: at least {}",
                Self::of_maintenance(share, *ENERGY_FLOOR_WITHOUT_VET)
            )),
            EnergyVerdict::NeedsVetsWord { share } => Said::because(
                format!(
                    "Too little energy without the vet's word: {}",
                    Self::of_maintenance(share, *ENERGY_FLOOR_WITHOUT_VET)
                ),
                format!(
                    "Under {} only a vet decides.",
                    self.percent(*ENERGY_FLOOR_WITHOUT_VET)
                ),
            ),
            EnergyVerdict::NeverAllowed { share } => Said::because(
                format!(
                    "Too little energy: {}",
                    Self::of_maintenance(share, *ENERGY_FLOOR)
                ),
                format!(
                    "Nothing goes under {}. Feed more forage.",
                    self.percent(*ENERGY_FLOOR)
                ),
            ),
            EnergyVerdict::ByWeightAndCondition => Said::because(
                "It goes by weight and condition, not by energy",
                "The energy equation of horses is not used for donkeys and mules.",
            ),
            EnergyVerdict::NotPublishedHere(state) => Said::because(
                "Its energy need is higher, and no plan is made here: ask the vet",
                format!("{}.", self.state(state)),
            ),
        }
    }

    fn needs_finding(&self, finding: Finding) -> Said {
        match finding {
            Finding::StageNotKnown(state, gap) => Said::because(
                "Its needs are not reckoned, and it is never restricted: ask the vet",
                format!("{}. {}", self.state(state), stage_gap(state, gap)),
            ),
            Finding::NeverRestricted(state) => Said::because(
                "It is balanced and never restricted",
                format!("{}.", self.state(state)),
            ),
            Finding::WorkNotReckoned => Said::plain(
                "Its work comes on top and is not in these needs: feed more and watch its condition",
            ),
            Finding::EnergyByWeightAndCondition => Said::plain(
                "Energy goes by weight and condition: the equation of horses is not used for it",
            ),
            Finding::HorseNeedsStandIn => Said::plain(
                "The needs of a horse of the same weight stand in: none are published for it",
            ),
            Finding::TargetNotKnown => Said::because(
                "Minerals and vitamins are reckoned on its weight now: score its condition for a target",
                "No target weight is known.",
            ),
        }
    }

    fn nutrient(&self, nutrient: Nutrient) -> &'static str {
        match nutrient {
            Nutrient::CrudeProtein => "Protein",
            Nutrient::Lysine => "Lysine",
            Nutrient::Calcium => "Calcium",
            Nutrient::Phosphorus => "Phosphorus",
            Nutrient::Magnesium => "Magnesium",
            Nutrient::Potassium => "Potassium",
            Nutrient::Sodium => "Sodium",
            Nutrient::Chloride => "Chloride",
            Nutrient::Sulphur => "Sulphur",
            Nutrient::Copper => "Copper",
            Nutrient::Zinc => "Zinc",
            Nutrient::Manganese => "Manganese",
            Nutrient::Iron => "Iron",
            Nutrient::Iodine => "Iodine",
            Nutrient::Selenium => "Selenium",
            Nutrient::Cobalt => "Cobalt",
            Nutrient::VitaminA => "Vitamin A",
            Nutrient::VitaminD => "Vitamin D",
            Nutrient::VitaminE => "Vitamin E",
            Nutrient::Thiamin => "Thiamin (vitamin B1)",
            Nutrient::Riboflavin => "Riboflavin (vitamin B2)",
        }
    }

    fn nutrients(&self, nutrients: &[Nutrient]) -> String {
        let names: Vec<String> = nutrients
            .iter()
            .map(|nutrient| small(self.nutrient(*nutrient)))
            .collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        self.list(&names)
    }

    fn nutrient_unit(&self, unit: NutrientUnit) -> &'static str {
        match unit {
            NutrientUnit::Gram => "g",
            NutrientUnit::Milligram => "mg",
            NutrientUnit::InternationalUnit => "IU",
        }
    }

    fn amount(&self, nutrient: Nutrient, amount: Amount) -> String {
        nutrient.in_unit(amount).map_or_else(
            || "not known".to_owned(),
            |value| format!("{} {}", sized(value), self.nutrient_unit(nutrient.unit())),
        )
    }

    fn amount_beside(&self, nutrient: Nutrient, amount: Amount, limit: Amount) -> String {
        match (nutrient.in_unit(amount), nutrient.in_unit(limit)) {
            (Some(value), Some(limit)) => format!(
                "{} {}",
                up_to_beside(value, limit, decimals_of(value)),
                self.nutrient_unit(nutrient.unit())
            ),
            (None, _) | (_, None) => self.amount(nutrient, amount),
        }
    }

    fn cap_verdict(&self, verdict: CapVerdict) -> String {
        match verdict {
            CapVerdict::Within { part } => {
                format!(
                    "within its cap: {} of the forage",
                    self.percent(part.to_fraction())
                )
            }
            CapVerdict::Watch { part } => format!(
                "more than usual: {} of the forage. Watch it",
                self.percent(part.to_fraction())
            ),
            CapVerdict::Over { part, most } => format!(
                "over its cap: {} % of the forage, at most {}",
                up_to_beside(part.to_percent(), most.to_percent(), 0),
                self.percent(most.to_fraction())
            ),
            CapVerdict::NotKnown => "not known".to_owned(),
        }
    }

    fn donkey_loss(&self, verdict: DonkeyLossVerdict) -> Said {
        match verdict {
            DonkeyLossVerdict::Within => Said::plain("It loses slowly enough for a donkey"),
            DonkeyLossVerdict::TooFast { a_month, most } => Said::because(
                "It loses too fast for a donkey: feed more and ring the vet",
                format!(
                    "It lost {} kg as of a month; at most {} kg.",
                    up_to_beside(a_month.to_kg(), most.to_kg(), 1),
                    up_to(most.to_kg(), 1)
                ),
            ),
            DonkeyLossVerdict::NotKnown => {
                Said::plain("How fast it loses is not known yet: weigh it again")
            }
        }
    }

    fn meal_limit(&self, limit: &MealLimit) -> String {
        match limit {
            MealLimit::SugarAndStarch { meal, from: _ } => format!(
                "At most {} of sugar and starch in one bucket meal",
                self.nutrient_mass(*meal)
            ),
            MealLimit::Starch { meal, day, from: _ } => format!(
                "Under {} of starch in one bucket meal, under {} a day",
                self.nutrient_mass(*meal),
                self.nutrient_mass(*day)
            ),
        }
    }

    fn meal_verdict(&self, verdict: MealVerdict) -> String {
        match verdict {
            MealVerdict::Within => "within the limit of one bucket meal".to_owned(),
            MealVerdict::Over { holds, limit } => format!(
                "over the limit of one bucket meal: {} g, at most {} g",
                up_to_beside(holds.to_g(), limit.to_g(), 0),
                up_to(limit.to_g(), 1)
            ),
            MealVerdict::NotKnown => {
                "not known: the label does not say its sugar and starch".to_owned()
            }
        }
    }

    fn upper_verdict(&self, nutrient: Nutrient, verdict: UpperVerdict) -> String {
        match verdict {
            UpperVerdict::Within => "within".to_owned(),
            UpperVerdict::Warn { from } => {
                format!(
                    "near its ceiling, watch from {}",
                    self.amount(nutrient, from)
                )
            }
            UpperVerdict::Over { most } => {
                format!("over its ceiling of {}", self.amount(nutrient, most))
            }
            UpperVerdict::NotKnown => "no ceiling published".to_owned(),
        }
    }

    fn ratio_verdict(&self, verdict: RatioVerdict) -> String {
        let to_one = |ratio: f64| format!("{} to 1", fixed(ratio, 1));
        match verdict {
            RatioVerdict::Usual { ratio } => format!("{}, as usual", to_one(ratio)),
            RatioVerdict::Wide { ratio } => {
                format!("{}, wide, and borne by a grown animal", to_one(ratio))
            }
            RatioVerdict::Narrow { ratio } => {
                format!("{}, narrow for a growing animal", to_one(ratio))
            }
            RatioVerdict::Remark { ratio } => format!("{}, worth a remark", to_one(ratio)),
            RatioVerdict::TooLow { ratio } => format!("{}, too low", to_one(ratio)),
            RatioVerdict::TooHigh { ratio } => format!("{}, too high", to_one(ratio)),
            RatioVerdict::NotKnown => "not known".to_owned(),
        }
    }

    fn review(&self, review: Review) -> String {
        match review {
            Review::EveryDays(7) => "Every week".to_owned(),
            Review::EveryDays(days) if days > 0 && days % 7 == 0 => {
                format!("Every {} weeks", days / 7)
            }
            Review::EveryDays(days) => format!("Every {days} days"),
            Review::AtVetsWord => "When the vet says so".to_owned(),
            Review::OnReturn => "When it comes back".to_owned(),
        }
    }

    fn water(&self, need: &WaterNeed) -> Said {
        let sentence = format!(
            "Water always within its reach, at least {} a day",
            self.litres(need.least)
        );
        let usual = need.usual.map(|[low, high]| {
            format!(
                "Published for one of its weight are {} litres; on dry hay alone it may drink almost double.",
                between(&up_to(low.to_l(), 0), &up_to(high.to_l(), 0), "to")
            )
        });
        let cold = need.cold_cut.map(|[low, high]| {
            format!(
                "Water near freezing cut drinking by {} %: take the chill off and look twice a day.",
                between(&up_to(low * 100.0, 0), &up_to(high * 100.0, 0), "to")
            )
        });
        let why: Vec<String> = [usual, cold].into_iter().flatten().collect();
        if why.is_empty() {
            Said::plain(sentence)
        } else {
            Said::because(sentence, why.join(" "))
        }
    }

    fn water_weather(&self, weather: WaterWeather) -> &'static str {
        match weather {
            WaterWeather::NearFreezing => "Water near freezing",
            WaterWeather::Cool => "Cool",
            WaterWeather::Mild => "About 20 °C",
            WaterWeather::Hot => "About 30 °C",
        }
    }

    fn limits_error(&self, error: &LimitsError) -> String {
        match error {
            LimitsError::OutOfRange(error) => self.out_of_range(error),
            LimitsError::NotInOrder {
                field,
                values: [least, likely, most],
            } => format!(
                "{}: {}, {} and {} do not rise from least to most",
                self.field(field),
                sized(*least),
                sized(*likely),
                sized(*most)
            ),
        }
    }
}

/// Why the needs of a stage are not reckoned, and what would mend it.
const fn stage_gap(state: State, gap: StageGap) -> &'static str {
    match (gap, state) {
        (StageGap::NotSaid, State::Growing) => {
            "Its month of birth or the weight it will grow to is not known: write both into its details."
        }
        (StageGap::NotSaid, State::Pregnant) => {
            "The day she was covered is not known: write it into her details."
        }
        (StageGap::NotSaid, State::Lactating) => {
            "The day she foaled is not known: write it into her details."
        }
        (StageGap::NotSaid, State::Adult) => "It is not known since when.",
        (StageGap::NotYet, _) => "The day in its details has not come yet.",
        (StageGap::Younger, _) => "It is younger than four months: so young it lives on milk.",
        (StageGap::Past, State::Pregnant) => {
            "By the day she was covered she would have foaled: look at her details."
        }
        (StageGap::Past, State::Lactating) => {
            "Needs in milk are published for six months, and she foaled longer ago."
        }
        (StageGap::Past, State::Growing | State::Adult) => {
            "Needs of growth are published to 24 months, and it is older: look whether it is grown."
        }
        (StageGap::Weight, _) => "The weight it will grow to is not believed: look at its details.",
    }
}
