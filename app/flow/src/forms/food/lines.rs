//! The lines of a label, as they are typed and as they stand in a draft.

use super::super::hay::reported;
use tussock_core::log::LogError;
use tussock_core::log::bodies::LabelLineV2;
use tussock_core::ration::{Content, FromText, LabelLine, LabelUnit};
use tussock_core::units::parse::{ParseError, number};

/// A line of a label as it is typed.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LineTyped {
    /// The key of what it is of; empty while nothing is chosen.
    pub content: String,
    /// The number.
    pub value: String,
    /// The word of its unit; empty while none is chosen.
    pub unit: String,
}

/// What is wrong with a line.
#[derive(Clone, Debug, PartialEq)]
pub enum LineWrong {
    /// It is not said of what it is.
    NoContent,
    /// It is not said in which unit.
    NoUnit,
    /// The number.
    Number(ParseError),
    /// It cannot be stored.
    Log(LogError),
}

/// What parts the parts of a line in a draft; nobody types it.
const PART: char = '\t';

impl LineTyped {
    /// Whether nothing of it was typed or chosen.
    pub fn is_blank(&self) -> bool {
        self.content.is_empty() && self.value.trim().is_empty() && self.unit.is_empty()
    }

    /// Of what it is.
    pub fn content(&self) -> Option<Content> {
        Content::from_key(&self.content)
    }

    /// In which unit.
    pub fn unit(&self) -> Option<LabelUnit> {
        LabelUnit::from_word(&self.unit)
    }

    /// The line, as the label check takes it.
    ///
    /// # Errors
    /// Everything that is wrong with it.
    pub fn line(&self) -> Result<LabelLine, Vec<LineWrong>> {
        let mut wrong = Vec::new();
        let content = self.content();
        if content.is_none() {
            wrong.push(LineWrong::NoContent);
        }
        let unit = self.unit();
        if unit.is_none() {
            wrong.push(LineWrong::NoUnit);
        }
        match (number(&self.value), content, unit) {
            (Ok(value), Some(content), Some(unit)) => Ok(LabelLine {
                content,
                value,
                unit,
            }),
            (Ok(_), ..) => Err(wrong),
            (Err(error), ..) => {
                wrong.push(LineWrong::Number(error));
                Err(wrong)
            }
        }
    }

    /// The line as it is stored.
    pub(super) fn stored(&self) -> Result<LabelLineV2, Vec<LineWrong>> {
        let line = self.line()?;
        Ok(LabelLineV2 {
            content: Some(line.content),
            name: None,
            reported: reported(self.value.trim(), &self.unit)
                .map_err(|error| vec![LineWrong::Log(error)])?,
        })
    }

    /// A stored line; `None` for one that is kept and not reckoned with.
    pub fn of(line: &LabelLineV2) -> Option<Self> {
        Some(Self {
            content: line.content?.key().to_owned(),
            value: line.reported.value.digits().to_owned(),
            unit: line.reported.unit.as_str().to_owned(),
        })
    }

    /// What was accepted of a pasted text. A number that can be read in two ways stands as it was accepted.
    pub fn accepted(found: &FromText) -> Self {
        let value = match number(&found.number) {
            Ok(_) => found.number.clone(),
            Err(_) => found.value.to_string(),
        };
        Self {
            content: found
                .content
                .map(Content::key)
                .unwrap_or_default()
                .to_owned(),
            value,
            unit: found
                .unit
                .map(LabelUnit::word)
                .unwrap_or_default()
                .to_owned(),
        }
    }
}

/// The lines as one text of a draft.
pub fn lines_text(lines: &[LineTyped]) -> String {
    lines
        .iter()
        .map(|line| {
            let plain = |text: &str| text.replace([PART, '\n'], " ");
            [plain(&line.content), plain(&line.unit), plain(&line.value)].join("\t")
        })
        .collect::<Vec<_>>()
        .join("\n")
}

/// The lines of such a text.
pub fn lines_of(text: &str) -> Vec<LineTyped> {
    if text.is_empty() {
        return Vec::new();
    }
    text.split('\n')
        .map(|line| {
            let mut parts = line.splitn(1 + 2, PART).map(str::to_owned);
            let mut next = || parts.next().unwrap_or_default();
            LineTyped {
                content: next(),
                unit: next(),
                value: next(),
            }
        })
        .collect()
}
