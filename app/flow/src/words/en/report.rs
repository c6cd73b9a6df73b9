//! What to look at again in a laboratory report.

use super::English;
use crate::words::{ForageWords, Said, UnitWords};
use tussock_core::forage::ReportFinding;

pub(super) fn finding(say: &English, finding: ReportFinding) -> Said {
    let again = |sentence: &str, why: String| Said::because(sentence, why);
    match finding {
        ReportFinding::EscOverWsc { esc, wsc } => again(
            "Look again: ESC cannot be more than WSC",
            format!(
                "ESC {}, WSC {}. The larger counts as WSC until it is corrected.",
                say.share_beside(esc, wsc),
                say.share(wsc)
            ),
        ),
        ReportFinding::AdfOverNdf { adf, ndf } => again(
            "Look again: ADF cannot be more than NDF",
            format!(
                "ADF {}, NDF {}.",
                say.share_beside(adf, ndf),
                say.share(ndf)
            ),
        ),
        ReportFinding::PartsOverWhole { sum } => again(
            "Look again: the parts are more than the whole",
            format!(
                "They add up to {} of dry matter. Often the numbers were dry matter already.",
                say.share(sum)
            ),
        ),
        ReportFinding::PartsUnderWhole { sum } => again(
            "Look again: the parts are far less than the whole",
            format!(
                "They add up to {} of dry matter. Often the numbers were as fed.",
                say.share(sum)
            ),
        ),
        ReportFinding::NscIsWscStarch => Said::plain("The stated NSC is WSC + starch"),
        ReportFinding::NscIsEscStarch => Said::plain("The stated NSC is ESC + starch"),
        ReportFinding::NscIsNeither { stated } => again(
            "The stated NSC is neither sum of its parts: the parts are used",
            format!("Stated as {}.", say.share(stated)),
        ),
        ReportFinding::NscUnexplained => again(
            "Ask the laboratory which sum its NSC is",
            "Until then it is taken as WSC + starch.".to_owned(),
        ),
        ReportFinding::ZeroTakenAsNotMeasured { analyte } => Said::plain(format!(
            "A zero for {} is taken as not measured",
            super::fields::small(say.analyte(analyte))
        )),
        ReportFinding::GivenTwice { analyte } => Said::plain(format!(
            "{} is there twice with different numbers: the larger is kept",
            say.analyte(analyte)
        )),
    }
}
