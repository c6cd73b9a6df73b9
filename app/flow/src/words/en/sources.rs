//! Marks and citations.

use super::English;
use crate::words::SourceWords;
use tussock_core::sources::{Constant, Mark, Source, Work};

impl SourceWords for English {
    fn mark(&self, mark: Mark) -> &'static str {
        match mark {
            Mark::Published => "published",
            Mark::WorkedOut => "worked out",
            Mark::FromMemory => "from memory",
            Mark::CommonPractice => "common practice, no source",
            Mark::Ours => "our judgement",
        }
    }

    fn mark_means(&self, mark: Mark) -> &'static str {
        match mark {
            Mark::Published => {
                "Read in the publication, mostly its abstract, a table or a fact sheet"
            }
            Mark::WorkedOut => "Worked out from values that were read in publications",
            Mark::FromMemory => "Known from the literature, and not read again in print",
            Mark::CommonPractice => "What the trade does; no publication was found for it",
            Mark::Ours => "Decided by those who made this, without a publication",
        }
    }

    fn citation(&self, work: Work) -> String {
        let cited = work.citation();
        let parts: Vec<String> = [
            cited.authors.to_owned(),
            cited.year.map(|year| year.to_string()).unwrap_or_default(),
        ]
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect();
        let who = parts.join(" ");
        [who.as_str(), cited.title, cited.appeared]
            .into_iter()
            .filter(|part| !part.is_empty())
            .collect::<Vec<_>>()
            .join(". ")
    }

    fn constant(&self, constant: &Constant) -> String {
        let mark = self.mark(constant.mark);
        // The two marks that stand for no publication say so themselves; a citation would only repeat them.
        match constant.mark {
            Mark::CommonPractice => mark.to_owned(),
            Mark::Ours if constant.work == Work::Tussock => mark.to_owned(),
            Mark::Ours | Mark::Published | Mark::WorkedOut | Mark::FromMemory => {
                let citation = self.citation(constant.work);
                if constant.place.is_empty() {
                    format!("{citation} ({mark})")
                } else {
                    format!("{citation}, {} ({mark})", constant.place)
                }
            }
        }
    }

    fn source(&self, source: &Source) -> Option<String> {
        match source {
            Source::Constant(id) => tussock_core::constants()
                .iter()
                .find(|constant| constant.id == *id)
                .map(|constant| self.constant(constant)),
            Source::Record(_) => Some("A record of this yard".to_owned()),
            Source::Default(field) => Some(format!(
                "A default for {}, which nobody measured",
                super::fields::small(&super::fields::name(field))
            )),
        }
    }
}
