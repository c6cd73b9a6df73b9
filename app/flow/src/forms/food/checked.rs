//! What the label check says of a label while it is typed.

use super::Typed;
use super::fields::grams;
use tussock_core::log::bodies::LabelBasis;
use tussock_core::ration::{self, FoodClass, LabelFinding, LabelLine, RawLabel, check_label};
use tussock_core::units::parse::number;

/// What the label check says of what is typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Checked {
    /// Each finding with the place of its line; `None` where it is of a field or of several lines.
    pub findings: Vec<(Option<usize>, LabelFinding)>,
}

impl Checked {
    /// What is found of a line.
    pub fn of(&self, line: usize) -> impl Iterator<Item = &LabelFinding> {
        self.findings
            .iter()
            .filter(move |(at, _)| *at == Some(line))
            .map(|(_, finding)| finding)
    }

    /// What is found of no line alone.
    pub fn of_the_whole(&self) -> impl Iterator<Item = &LabelFinding> {
        self.findings
            .iter()
            .filter(|(at, _)| at.is_none())
            .map(|(_, finding)| finding)
    }
}

/// Whether a finding leaves something out of the food, so that it is not saved.
pub(super) const fn leaves_out(finding: &LabelFinding) -> bool {
    match finding {
        LabelFinding::Impossible { .. }
        | LabelFinding::UnitOfOtherSort { .. }
        | LabelFinding::Needs { .. }
        | LabelFinding::Field { .. } => true,
        LabelFinding::Unlikely { .. }
        | LabelFinding::GivenTwice { .. }
        | LabelFinding::PartOverWhole { .. }
        | LabelFinding::PartsOverWhole { .. } => false,
    }
}

impl Typed {
    /// What the label check says of what can be read so far. While the basis is not chosen, it is taken as fed.
    pub fn checked(&self) -> Checked {
        let read: Vec<(usize, LabelLine)> = self
            .typed_lines()
            .filter_map(|(at, line)| Some((at, line.line().ok()?)))
            .collect();
        let percent = |text: &str| number(text).ok();
        let (_, findings) = check_label(&RawLabel {
            id: None,
            name: String::new(),
            class: self.class.unwrap_or(FoodClass::Other),
            basis: match self.basis {
                Some(LabelBasis::DryMatter) => ration::LabelBasis::DryMatter,
                Some(LabelBasis::AsFed) | None => ration::LabelBasis::AsFed,
            },
            dry_percent: percent(&self.dry),
            serving_g: grams(&self.serving).ok().map(|mass| mass.to_kg() * 1000.0),
            // Grams for 100 kg are a hundredth of grams a kilogram.
            rate_g_per_kg: percent(&self.rate).map(|rate| rate / 100.0),
            lines: read.iter().map(|(_, line)| *line).collect(),
            record: None,
        });
        let place = |finding: &LabelFinding| {
            let at = |fits: &dyn Fn(&LabelLine) -> bool| {
                read.iter()
                    .rev()
                    .find(|(_, line)| fits(line))
                    .map(|(at, _)| *at)
            };
            match *finding {
                LabelFinding::Impossible {
                    content,
                    value,
                    unit,
                    ..
                }
                | LabelFinding::Unlikely {
                    content,
                    value,
                    unit,
                    ..
                } => at(&|line| {
                    line.content == content
                        && line.unit == unit
                        && line.value.total_cmp(&value).is_eq()
                }),
                LabelFinding::UnitOfOtherSort { content, unit }
                | LabelFinding::Needs { content, unit, .. } => {
                    at(&|line| line.content == content && line.unit == unit)
                }
                LabelFinding::GivenTwice { content } => at(&|line| line.content == content),
                LabelFinding::PartOverWhole { part, .. } => at(&|line| line.content == part),
                LabelFinding::Field { .. } | LabelFinding::PartsOverWhole { .. } => None,
            }
        };
        Checked {
            findings: findings
                .into_iter()
                .map(|finding| (place(&finding), finding))
                .collect(),
        }
    }
}
