//! The draft of a visit's report, in the client's words: plain text, a paragraph an animal.

use super::English;
use super::yard_visit::steps;
use crate::views::yard_visit::report::{InUse, OnAnimal, Report};
use crate::words::{BesideWords, PlanWords, UnitWords, YardVisitWords};

/// The draft.
pub(super) fn draft(words: English, report: &Report) -> String {
    let mut parts = vec![format!("Visit of {}", words.date(report.on))];
    if let Some(since) = &report.since
        && !since.yard.is_empty()
    {
        let lines: Vec<String> = since
            .yard
            .iter()
            .map(|change| format!("{}.", words.yard_change(change)))
            .collect();
        parts.push(lines.join("\n"));
    }
    parts.extend(report.animals.iter().map(|animal| of_animal(words, animal)));
    parts.push(
        "Ring the vet the same day when one of them walks short or stiff, shifts its weight, will not turn, has a strong pulse at a foot, or leaves its hay. Then no grass and no work until the vet has said so."
            .to_owned(),
    );
    parts.push(
        "Weights from a tape are estimates and are no basis for the dose of a medicine.".to_owned(),
    );
    parts.join("\n\n")
}

fn of_animal(words: English, of: &OnAnimal) -> String {
    let mut lines = vec![of.name.clone()];
    if let Some(stop) = &of.stop {
        lines.push(format!(
            "{}. {}",
            words.stop_order(stop),
            words.stop_why(stop)
        ));
    }
    lines.push(measured(words, of));
    if let Some(signs) = &of.signs {
        lines.push(format!("Look-over: {}.", words.signs(signs).sentence));
    }
    if !of.changes.is_empty() {
        let changes: Vec<String> = of
            .changes
            .iter()
            .map(|change| words.change(change))
            .collect();
        lines.push(format!("Since the last visit: {}.", changes.join("; ")));
    }
    lines.push(match &of.plan {
        Some(plan) => planned(words, plan),
        None => "No plan is in use.".to_owned(),
    });
    if !of.open.is_empty() {
        lines.push(format!("Not done this time: {}.", steps(words, &of.open)));
    }
    lines.join("\n")
}

/// Weight, condition and crest, each as it holds.
fn measured(words: English, of: &OnAnimal) -> String {
    let weight = of.weight.as_ref().map_or_else(
        || "Weight not known".to_owned(),
        |dated| {
            let either = dated.weight.either_way();
            format!(
                "Weight {}, give or take {}",
                words.body(dated.weight.value),
                words.body(either)
            )
        },
    );
    let condition = of.condition.map_or_else(
        || "condition not scored".to_owned(),
        |range| format!("condition {} of 9", words.condition_figure(range)),
    );
    let crest = of.crest.map_or_else(
        || "crest not scored".to_owned(),
        |crest| format!("crest {} of 5", crest.score()),
    );
    format!("{weight}; {condition}; {crest}.")
}

fn planned(words: English, of: &InUse) -> String {
    let hays: Vec<String> = of
        .hays
        .iter()
        .map(|hay| {
            let soaked = if hay.soaked {
                ", weighed before soaking"
            } else {
                ""
            };
            format!("{} of {} a day{soaked}", words.feed(hay.as_fed), hay.name)
        })
        .collect();
    let hays: Vec<&str> = hays.iter().map(String::as_str).collect();
    format!(
        "Plan: {} a day; {}, in {}. Next review {}.",
        words.level(of.plan.level.part()),
        words.list(&hays),
        words.count(of.plan.nets.len(), "net", "nets"),
        words.date(of.plan.review)
    )
}
