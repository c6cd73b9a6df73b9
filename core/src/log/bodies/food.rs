//! A food other than forage, with its label as typed.

mod climb;
mod refuse;
#[cfg(test)]
mod tests;
mod words;

pub(crate) use climb::food_with_class;

use super::base::{FeedWeight, Reported};
use super::reported::{grams, percent, rate_g_per_kg};
use crate::animal::FoodId;
use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{Name, choice, twin};
use crate::ration::{
    self, Content, Food, FoodClass, LabelLine, LabelUnit, RawLabel, TypicalFood, check_label,
};
use crate::sources::RecordId;
use crate::units::{Money, PricePerKg};
use words::LABEL_UNITS;

choice! {
    /// What the shares on a label are of.
    LabelBasis {
        /// Of the feed as it lies in the bag.
        AsFed = "as_fed",
        /// Of dry matter.
        DryMatter = "dry_matter",
    }
}
twin! {
    /// A line of a label.
    LabelLineV2 {
        /// What it says; `None` for a line that is kept and not reckoned with.
        content: Option<Content>,
        /// The name as printed.
        name: Option<Name>,
        /// The value as printed.
        reported: Reported,
    }
}
twin! {
    /// A food other than forage.
    FoodV2 {
        /// Its name, as the person calls it.
        name: Name,
        /// What it is, as a ration judges it.
        class: FoodClass,
        /// The typical food whose numbers stand in while no label is typed.
        profile: Option<TypicalFood>,
        /// What the shares on its label are of.
        basis: LabelBasis,
        /// Its dry matter, when the label says it.
        dry_matter: Option<Reported>,
        /// What a serving weighs, when the label says it, in `g` or `kg`.
        serving: Option<Reported>,
        /// The label; empty when nobody typed it.
        label: Vec<LabelLineV2>,
        /// How much the label says to feed a day, in `g/kg` or `g/100kg` of body weight.
        rate: Option<Reported>,
        /// What one scoop of it weighs, weighed once.
        scoop: Option<FeedWeight>,
        /// What a pack weighs.
        pack: Option<FeedWeight>,
        /// What a pack costs.
        price: Option<Money>,
    }
}

impl FoodV2 {
    /// A typical food in the yard, with its typical numbers until a label is typed.
    pub const fn typical(name: Name, food: TypicalFood) -> Self {
        Self {
            name,
            class: food.class(),
            profile: Some(food),
            basis: LabelBasis::AsFed,
            dry_matter: None,
            serving: None,
            label: Vec::new(),
            rate: None,
            scoop: None,
            pack: None,
            price: None,
        }
    }

    /// Whether a line of a label was typed that is reckoned with.
    pub fn has_label(&self) -> bool {
        self.label.iter().any(|line| line.content.is_some())
    }

    /// The label as it was typed, for [`check_label`]: what cannot be is found there, line by line.
    ///
    /// Errors: a unit that is not understood, with its field.
    pub fn raw_label(&self, id: &RecordId) -> Result<RawLabel, LogError> {
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        let dry_percent = match &self.dry_matter {
            Some(reported) => Some(percent(reported, &body.key("dry_matter"))?),
            None => None,
        };
        let serving_g = match &self.serving {
            Some(reported) => Some(grams(reported, &body.key("serving"))?),
            None => None,
        };
        let label_path = body.key("label");
        let mut lines = Vec::new();
        for (index, line) in self.label.iter().enumerate() {
            let Some(content) = line.content else {
                continue;
            };
            let word = line.reported.unit.as_str();
            let line_path = label_path.index(index);
            let path = line_path.key("reported");
            let unit = LabelUnit::from_word(word)
                .ok_or_else(|| path.key("unit").refuse(word, Allowed::OneOf(LABEL_UNITS)))?;
            lines.push(LabelLine {
                content,
                value: line.reported.value.number(),
                unit,
            });
        }
        Ok(RawLabel {
            id: Some(FoodId(id.0.clone())),
            name: self.name.as_str().to_owned(),
            class: self.class,
            basis: match self.basis {
                LabelBasis::AsFed => ration::LabelBasis::AsFed,
                LabelBasis::DryMatter => ration::LabelBasis::DryMatter,
            },
            dry_percent,
            serving_g,
            rate_g_per_kg: self.rate(&body)?,
            lines,
            record: Some(id.clone()),
        })
    }

    /// The food behind a record: from its label, else the numbers of the typical food that was taken for it, marked as
    /// such; `None` when there is neither, so that a typical profile may stand in.
    ///
    /// Errors: a unit that is not understood or cannot measure its line, a line that lacks the label's dry matter, serving
    /// or rate, a number that cannot be; each with its field. What is only unlikely is no error, see [`Self::raw_label`].
    pub fn food(&self, id: &RecordId) -> Result<Option<Food>, LogError> {
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        if self.has_label() {
            let (read, findings) = check_label(&self.raw_label(id)?);
            for finding in findings {
                refuse::check(self, finding, &body)?;
            }
            return Food::read(read)
                .map(Some)
                .map_err(|error| refuse::refused(&error, &body));
        }
        let Some(profile) = self.profile else {
            return Ok(None);
        };
        let mut typical = profile.food();
        typical.id = Some(FoodId(id.0.clone()));
        self.name.as_str().clone_into(&mut typical.name);
        typical.class = self.class;
        match self.rate(&body)? {
            Some(rate) => typical
                .at_rate(rate)
                .map(Some)
                .map_err(|error| refuse::refused(&error, &body)),
            None => Ok(Some(typical)),
        }
    }

    /// What a kilogram of it costs; `None` while what a pack weighs or costs is not known.
    pub fn price_per_kg(&self) -> Option<PricePerKg> {
        self.price?.per_kg(self.pack.as_ref()?.g.as_fed())
    }

    fn rate(&self, body: &Path<'_>) -> Result<Option<f64>, LogError> {
        match &self.rate {
            Some(reported) => rate_g_per_kg(reported, &body.key("rate")).map(Some),
            None => Ok(None),
        }
    }
}
