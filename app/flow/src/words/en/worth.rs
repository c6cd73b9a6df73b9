//! Whether a laboratory test pays, in English.

use super::English;
use super::numbers::{odds, sized};
use crate::forms::worth::{Asked, NotAsked};
use crate::words::{UnitWords, WorthWords};
use tussock_core::forage::{Branch, Cost, Doing, Otherwise, Verdict, Way, Worth, WorthNote};
use tussock_core::units::Money;
use tussock_core::units::show::fixed;

impl English {
    fn minor(&self, minor: f64, worth: &Worth) -> String {
        Money::nearest(minor, worth.currency)
            .map_or_else(|| "not known".to_owned(), |money| self.money(money))
    }
}

/// Days, never shown as fewer than they are.
fn days(days: f64) -> String {
    fixed(days.ceil(), 0)
}

impl WorthWords for English {
    fn does_a_test_pay(&self) -> &'static str {
        "Does a test pay?"
    }
    fn does_a_test_pay_of(&self, name: &str) -> String {
        format!("{name}: does a test pay?")
    }
    fn test_not_asked(&self, why: NotAsked) -> &'static str {
        match why {
            NotAsked::NoLimit => "No animal here needs a sugar limit, so a test decides nothing",
            NotAsked::Settled => "A test of this hay as it comes would settle nothing more",
            NotAsked::Haylage => {
                "Haylage is not soaked, and passing a test is not enough for an animal at risk"
            }
            NotAsked::NotKnown => {
                "Too little is known of this hay: write down its dry matter first"
            }
        }
    }
    fn worth_label(&self, asked: Asked) -> &'static str {
        match asked {
            Asked::Batch => "How much there is",
            Asked::ADay => "How much is fed a day",
            Asked::Test => "What the test costs",
            Asked::Hay => "A tonne of this hay costs",
            Asked::Tested => "A tonne of tested hay costs",
            Asked::Minutes => "Minutes a day for soaking",
            Asked::Hour => "An hour of your time is worth",
        }
    }
    fn worth_hint(&self, asked: Asked) -> &'static str {
        match asked {
            Asked::Batch => "In kg, as it lies in the shed.",
            Asked::ADay => "In kg, to all who eat it, weighed dry.",
            Asked::Test => "With the post.",
            Asked::Hay => "May be left out: then what soaking washes out has no price.",
            Asked::Tested => "May be left out: then buying it is not compared.",
            Asked::Minutes => "Filling, lifting out, draining, carrying.",
            Asked::Hour => "May be left out: then the hours are counted and not priced.",
        }
    }
    fn worth_currency(&self) -> &'static str {
        "Prices are in"
    }
    fn worth_instead(&self) -> &'static str {
        "If tested hay is bought instead, this hay is"
    }
    fn worth_instead_is(&self, instead: Otherwise) -> &'static str {
        match instead {
            Otherwise::Saved => "sold, not bought, or eaten by others",
            Otherwise::LeftOver => "paid for and left over",
        }
    }
    fn worth(&self, worth: &Worth) -> String {
        let lasts = fixed(worth.days.floor(), 0);
        match &worth.pays_from {
            None => format!(
                "A test does not pay in money: {} costs less for any amount of hay",
                match worth.cheapest {
                    Way::BuyTested => "buying tested hay",
                    Way::Soak | Way::Test => "soaking",
                }
            ),
            Some(from) if worth.cheapest == Way::Test => format!(
                "A test pays from {} days on, {} kg: this hay lasts {lasts}",
                days(from.days),
                sized(from.hay.to_kg())
            ),
            Some(from) => format!(
                "A test does not pay for this hay: it pays from {} days on, {} kg, and this hay lasts {lasts}",
                days(from.days),
                sized(from.hay.to_kg())
            ),
        }
    }
    fn worth_ways(&self) -> &'static str {
        "What each way costs until this hay is eaten"
    }
    fn worth_way(&self, way: Way) -> &'static str {
        match way {
            Way::Test => "Test it, and act on what it says",
            Way::Soak => "Soak it without a test",
            Way::BuyTested => "Buy tested hay instead",
        }
    }
    fn worth_cost(&self, cost: &Cost, worth: &Worth) -> String {
        self.minor(cost.minor, worth)
    }
    fn worth_hours(&self, cost: &Cost) -> String {
        if cost.hours > 0.0 {
            format!("about {} hours of work", sized(cost.hours))
        } else {
            "no work for soaking".to_owned()
        }
    }
    fn worth_not_known(&self) -> &'static str {
        "not known"
    }
    fn worth_branch(&self, verdict: Verdict, branch: &Branch, worth: &Worth) -> String {
        let comes_out = match verdict {
            Verdict::Within { .. } => "within the limit",
            Verdict::Over { .. } => "over the limit",
            Verdict::NotProven { .. } => "not proven",
        };
        format!(
            "It comes out {comes_out}, {}: {}, {}",
            odds(branch.chance),
            self.worth_doing(branch.does),
            self.minor(branch.cost.minor, worth)
        )
    }
    fn worth_doing(&self, doing: Doing) -> &'static str {
        match doing {
            Doing::FeedAsItComes => "fed as it comes",
            Doing::Soak => "soaked, and still not proven",
            Doing::BuyTested => "tested hay is bought",
        }
    }
    fn worth_note(&self, note: WorthNote) -> &'static str {
        match note {
            WorthNote::SoakingSettlesNothing => {
                "Soaking settles nothing for an animal that had laminitis or has insulin dysregulation: soaked hay stays not proven until the soaked hay is tested."
            }
            WorthNote::OverIsSoaked => {
                "If the test says over, look for other hay: soaking is reckoned here only because no price of tested hay is known."
            }
            WorthNote::TimeHasNoPrice => "The work is counted in hours and has no price here.",
            WorthNote::WashedOutHasNoPrice => {
                "Soaking washes out 4 to 6 % of the hay in a short soak. Without a price of this hay that is not counted."
            }
            WorthNote::NoTestedPrice => {
                "Buying tested hay is not compared: its price is not known."
            }
        }
    }
    fn back_to_the_hay(&self) -> &'static str {
        "Back to the hay"
    }
}
