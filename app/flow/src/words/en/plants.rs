//! Plants in English.

use super::English;
use super::field::headed;
use super::numbers::up_to;
use crate::words::{PlantsWords, Said, UnitWords};
use tussock_core::graze::plants::{
    Act, CalciumToOxalate, Endophyte, Growth, Harm, Hazard, Nitrate, PlantId, Region,
    SugarPotential, When, Whom,
};

impl PlantsWords for English {
    fn plant(&self, plant: PlantId) -> String {
        headed(plant.common())
    }
    fn scientific(&self, plant: PlantId) -> &'static str {
        plant.scientific()
    }
    fn growth(&self, growth: Growth) -> &'static str {
        match growth {
            Growth::CoolGrass => "cool-season grass",
            Growth::WarmGrass => "warm-season grass",
            Growth::Cereal => "cereal, grazed green",
            Growth::Legume => "clover or lucerne",
            Growth::Herb => "herb or fern",
            Growth::Tree => "tree or shrub",
        }
    }
    fn harm(&self, harm: Harm) -> Said {
        match harm {
            Harm::BonesLoseCalcium => Said::because(
                "Oxalate binds calcium, and bones lose it",
                "First signs: lameness that shifts, a stilted gait, later a swollen face. Ring the vet.",
            ),
            Harm::RyegrassStaggers => Said::because(
                "A fungus in it: staggers",
                "Head tremor, a swaying gait, falls when driven. Take them off quietly and ring the vet.",
            ),
            Harm::MaresFailAtFoaling => Said::because(
                "A fungus in it: trouble at foaling",
                "A long gestation, no milk, a thick afterbirth, lost foals.",
            ),
            Harm::Slobbers => Said::because(
                "A mould on it: slobbers",
                "They dribble for as long as they eat it. Other dribbling is for the vet.",
            ),
            Harm::Cyanide => Said::because(
                "Prussic acid",
                "Fast breath, staggering, collapse within minutes to hours. Ring the vet at once.",
            ),
            Harm::SunburnAndLiver => Said::because(
                "Pale skin burns in the sun, and the liver is harmed",
                "Into the shade and off it, and ring the vet.",
            ),
            Harm::BlisterBeetle => Said::because(
                "Blister beetles in the hay",
                "Mouth, gut and bladder blister, and a few beetles kill. Ring the vet at once.",
            ),
            Harm::BladderAndGait => Said::because(
                "The bladder inflamed, the hindquarters weak",
                "Dribbled urine, an unsteady gait behind. Ring the vet.",
            ),
            Harm::LiverOverTime => Said::because(
                "The liver destroyed over weeks and months",
                "No sign until late: thin, dull, sunburnt, wandering. Whoever ate it is for the vet.",
            ),
            Harm::MouthBlisters => Said::because(
                "Mouth and gut blister",
                "They leave it where other grass grows; dry in hay it does little.",
            ),
            Harm::GutIrritated => Said::because(
                "Oils of the mustard kind irritate the gut",
                "Colic and loose droppings. Ring the vet.",
            ),
            Harm::FibreBalls => Said::because(
                "Balls of fibre in the gut: colic",
                "Eaten in dry weather when nothing else grows.",
            ),
            Harm::Stringhalt => Said::because(
                "Hind legs snatched up at each step",
                "Mostly on dry, poor pasture, and several animals at once. Off it, and ring the vet.",
            ),
            Harm::ThiamineLost => Said::because(
                "Vitamin B1 destroyed",
                "Weak, unsteady, trembling after weeks of it. Ring the vet.",
            ),
            Harm::MuscleDeath => Said::because(
                "Muscle destroyed within days: atypical myopathy",
                "Stiff, weak, dark urine, down. Mostly fatal: ring the vet at once, and move the others.",
            ),
            Harm::BloodDestroyed => Said::because(
                "Red blood cells destroyed",
                "Wilted leaves do it: pale or yellow gums, dark urine. Ring the vet at once.",
            ),
            Harm::GutAndKidneys => Said::because(
                "Gut and kidneys harmed",
                "Colic, off feed, blood in the droppings. Ring the vet.",
            ),
            Harm::HeartStops => Said::because(
                "The heart stops, often with no sign before",
                "A mouthful is enough, clippings too. Ring the vet at once.",
            ),
            Harm::PhalarisStaggers => Said::because(
                "Staggers and sudden death",
                "Worst on new growth after rain. Off it, and ring the vet.",
            ),
            Harm::AnnualRyegrassToxicity => Said::because(
                "Galls on the seed heads: fits, and mostly death",
                "Local rules may ask that it is told. Ring the vet at once.",
            ),
            Harm::ErgotStaggers => Said::because(
                "Ergot on the seed heads: staggers",
                "Trembling and an unsteady gait. Off it, and ring the vet.",
            ),
        }
    }
    fn act(&self, act: Act) -> &'static str {
        match act {
            Act::NeverGraze => "Do not graze it at any time",
            Act::TakeOff => "Take them off it",
            Act::FenceOff => "Fence it off, a crown's width and more",
            Act::ClearFallen => "Pick up what fell: leaves, branches, seeds, acorns",
            Act::PullAndBurn => {
                "Pull it with the root and take it away; wilted it is eaten. Ask what local rules say about burning it"
            }
            Act::MowSeedHeads => "Mow before it sets seed, and take the seed heads away",
            Act::NotInHay => "Keep it out of hay: dry it is as bad",
            Act::LookThroughHay => "Look through every slice of such hay",
            Act::HayBeforeTurnout => "Hay before they go out, and while they are out",
            Act::FeedOtherHay => "Feed other hay",
            Act::FeedLegumeOrOtherHay => "Feed a legume or another hay beside it",
            Act::BalanceCalcium => {
                "Reckon calcium against oxalate, and give what is short every day"
            }
            Act::LimitClover => "Keep clover a small part of the grass",
            Act::WatchGait => "Watch the gait",
            Act::TestForEndophyte => "Have it tested for endophyte",
            Act::MaresOffBeforeFoaling => {
                "Take mares in foal off it well before foaling; ask the vet when"
            }
            Act::RingVet => "Ate it, or looks unwell: ring the vet the same day",
            Act::RingVetNow => "Ate it, or looks unwell: ring the vet at once",
        }
    }
    fn whom(&self, whom: Whom) -> &'static str {
        match whom {
            Whom::All => "all of them",
            Whom::Broodmares => "mares in foal, and those to be covered",
        }
    }
    fn worst_when(&self, when: When) -> &'static str {
        match when {
            When::AllYear => "at any time",
            When::GrowingSeason => "while it grows",
            When::SpringSummer => "in spring and summer",
            When::SummerAutumn => "in late summer and autumn",
            When::AutumnAndSpring => "in autumn and again in spring",
            When::AutumnBreak => "on new growth after the autumn rain",
            When::WinterSpring => "in winter and spring",
            When::WetWarm => "in wet and warm weather",
            When::SeedHeads => "while seed heads stand",
            When::WiltedLeaves => "when leaves wilt: storms, felled branches, autumn",
        }
    }
    fn part_of_world(&self, region: Region) -> &'static str {
        match region {
            Region::BritishIsles => "Britain and Ireland",
            Region::Europe => "the rest of Europe",
            Region::NorthAmerica => "North America",
            Region::Australia => "Australia",
            Region::NewZealand => "New Zealand",
            Region::SouthernAfrica => "southern Africa",
            Region::Tropics => "the tropics and subtropics",
        }
    }
    fn sugar_potential(&self, sugar: SugarPotential) -> &'static str {
        match sugar {
            SugarPotential::Lower => "Less sugar than others, likely",
            SugarPotential::Middle => "In the middle",
            SugarPotential::Higher => "To avoid: may hold much sugar",
        }
    }
    fn harms_too(&self) -> &'static str {
        "It can harm in another way: read on under what harms"
    }
    fn sugar_word(&self, sugar: SugarPotential) -> &'static str {
        match sugar {
            SugarPotential::Lower => "lower",
            SugarPotential::Middle => "middle",
            SugarPotential::Higher => "higher",
        }
    }
    fn calcium_to_oxalate(&self, found: &CalciumToOxalate) -> Said {
        match found {
            CalciumToOxalate::NoOxalate => Said::plain("No oxalate in it"),
            CalciumToOxalate::Enough { ratio } => Said::plain(format!(
                "Calcium is {} times the oxalate: enough",
                up_to(*ratio, 2)
            )),
            CalciumToOxalate::Unsafe { ratio } => Said::because(
                format!(
                    "Calcium is {} times the oxalate: too little",
                    up_to(*ratio, 2)
                ),
                "Under half of it bones lose calcium. Give what is short every day, and ring the vet about signs.",
            ),
        }
    }
    fn endophyte(&self, found: Endophyte) -> Said {
        match found {
            Endophyte::Under => Said::plain("Under the level that horses bear"),
            Endophyte::Doubtful => Said::because(
                "Between the two levels that are given",
                "Not for mares; for others ask the vet.",
            ),
            Endophyte::Over => Said::because(
                "Over the level that horses bear",
                "Take them off it, and feed other hay.",
            ),
        }
    }
    fn nitrate(&self, found: Nitrate) -> Said {
        match found {
            Nitrate::Safe => Said::plain("Within the lower limit for nitrate"),
            Nitrate::Doubtful => Said::because(
                "Not proven for nitrate",
                "Not for mares late in foal; ask the vet about the others.",
            ),
            Nitrate::Unsafe => Said::because("Over the limit for nitrate", "Do not feed it."),
        }
    }
    fn hazard_line(&self, hazard: &Hazard) -> String {
        format!(
            "For {}, worst {}",
            self.whom(hazard.whom),
            self.worst_when(hazard.when)
        )
    }
    fn hazard_acts(&self, hazard: &Hazard) -> Vec<&'static str> {
        hazard.acts.iter().map(|act| self.act(*act)).collect()
    }
    fn plants_sentence(&self) -> &'static str {
        "Grasses, and what harms at grass"
    }
    fn kind_is_not_all(&self) -> &'static str {
        "No grass is fit for every animal by its kind. Season, frost and drought are worth more than the kind."
    }
    fn hazards_head(&self) -> &'static str {
        "What harms in your regions"
    }
    fn find_plant(&self) -> &'static str {
        "Find a plant"
    }
    fn find_plant_hint(&self) -> &'static str {
        "A part of its name, common or scientific."
    }
    fn no_region(&self) -> &'static str {
        "No region is ticked: what harms where you are is not shown"
    }
    fn for_regions(&self, regions: &[Region]) -> String {
        let names: Vec<&str> = regions
            .iter()
            .map(|region| self.part_of_world(*region))
            .collect();
        format!("For {}", self.list(&names))
    }
    fn tick_regions(&self) -> &'static str {
        "Tick your regions"
    }
    fn no_such_plant(&self) -> &'static str {
        "Nothing of that name here"
    }
    fn list_is_not_all(&self) -> &'static str {
        "This list is not complete. Ask locally what grows near you and harms; an animal that ate something is for the vet."
    }
}
