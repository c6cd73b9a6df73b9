//! The cases of the repository, worded from end to end: what comes of real plans reads as the rules ask.

use super::{check, check_head, check_said, tongues};
use crate::words::{
    AnimalWords, AssessWords, DayWords, English, ForageWords, LimitsWords, PlanWords, RationWords,
    SafetyWords,
};
use tussock_core::log::{Answer, Case};
use tussock_core::plan::Draft;
use tussock_core::safety::{GroupVerdict, Refused, SafetyVerdict};

fn cases() -> Vec<(String, Case)> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../core/examples/cases");
    let mut read: Vec<(String, Case)> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "json"))
        .map(|path| {
            let text = std::fs::read_to_string(&path).unwrap();
            let name = path.file_stem().unwrap().to_string_lossy().into_owned();
            (name, Case::read(&text).unwrap())
        })
        .collect();
    read.sort_by(|a, b| a.0.cmp(&b.0));
    read
}

fn word_draft(say: English, draft: &Draft) {
    check_said(&say.risk(&draft.risk));
    for hay in &draft.hays {
        check_said(&say.hay(hay));
        for judged in [&hay.as_it_comes, &hay.as_fed].into_iter().flatten() {
            check_said(&say.judgement(judged));
        }
    }
    if let Some(sugar) = &draft.sugar {
        check_said(&say.judgement(sugar));
    }
    for line in &draft.hay_alone {
        check(&say.standing(line));
    }
    for line in &draft.buckets {
        check_said(&say.bucket_line(line));
    }
    for line in &draft.with_buckets {
        check(&say.standing(line));
    }
    check_said(&say.energy_line(&draft.energy));
    check_said(&say.longest_gap(&draft.layout));
    check_said(&say.water(&draft.water));
    check(&say.meal_limit(&draft.meal));
    check(&say.cap_verdict(draft.straw));
    check_said(&say.grass(&draft.grass));
    check_said(&say.work(&draft.work));
    check(&say.review(draft.watch.review));
    check_said(&say.signs(&draft.look_over.signs));
    for raised in &draft.raised {
        check_said(&say.raised(*raised));
    }
    for mend in &draft.mends {
        check(&say.mend(*mend));
    }
    for lever in &draft.levers {
        check_said(&say.lever(lever));
    }
    for reason in &draft.allowance.why {
        check_said(&say.allowance_reason(*reason));
    }
    for bar in &draft.allowance.bars {
        check_said(&say.restriction_bar(bar));
    }
    for finding in &draft.assessed {
        check_said(&say.assess_finding(finding));
    }
    for finding in &draft.needed {
        check_said(&say.needs_finding(*finding));
    }
}

fn word_refused(say: English, refused: &Refused) {
    word_draft(say, &refused.draft);
    assert!(!refused.why.is_empty());
    for refusal in &refused.why {
        check_head(say.refusal_head(refusal));
        check_said(&say.refusal(refusal));
    }
    for meanwhile in &refused.meanwhile {
        check_said(&say.meanwhile(meanwhile));
    }
    if let Some(urgency) = refused.vet {
        check_head(say.vet(urgency));
    }
}

#[test]
fn every_case_reads_from_end_to_end() {
    let cases = cases();
    assert!(cases.len() >= 9, "{} cases", cases.len());
    let (mut plans, mut refusals) = (0, 0);
    for (name, case) in &cases {
        for (subject, answer) in case.answers() {
            for say in tongues() {
                match &answer {
                    Answer::Animal(SafetyVerdict::Allowed(plan)) => {
                        plans += 1;
                        word_draft(say, plan.planned());
                        for caution in plan.cautions() {
                            check_said(&say.caution(caution));
                        }
                    }
                    Answer::Animal(SafetyVerdict::Refused(refused)) => {
                        refusals += 1;
                        word_refused(say, refused);
                    }
                    Answer::Group(GroupVerdict::Allowed(group)) => {
                        plans += 1;
                        for why in &group.planned().separate {
                            check_said(&say.separate(why, &|_| "Moss".to_owned()));
                        }
                        for member in group.members() {
                            word_draft(say, member.planned());
                            for caution in member.cautions() {
                                check_said(&say.caution(caution));
                            }
                        }
                    }
                    Answer::Group(GroupVerdict::Refused(members)) => {
                        for member in members {
                            refusals += 1;
                            word_refused(say, member);
                        }
                    }
                    Answer::NoDraft(error) => check_said(&say.plan_error(error)),
                    Answer::NotThere => panic!("{name}: {subject:?} is not there"),
                }
            }
        }
    }
    assert!(
        plans > 0 && refusals > 0,
        "{plans} plans, {refusals} refusals"
    );
}
