//! A plan as JSON, for whoever uses the core without a browser and for comparing two machines.
//!
//! Every number in a field that names its unit, unrounded; everything else as the debug text of its type, which names
//! the case and its values. It is no stored format: what is stored is the record of an issued plan.

use crate::limits::Ends;
use crate::plan::{Draft, GrassLine, HayLine, PlanError};
use crate::ration::{DecidedBy, Line, Standing};
use crate::safety::{GroupPlan, GroupVerdict, Plan, Refused, SafetyVerdict};
use crate::units::{BodyMass, DryMatter};
use serde_json::{Map, Value, json};

/// What safety says of a draft, as JSON: `{"plan": …}` or `{"refused": …}`.
pub(super) fn account(verdict: &SafetyVerdict) -> Value {
    match verdict {
        SafetyVerdict::Allowed(plan) => json!({ "plan": allowed(plan) }),
        SafetyVerdict::Refused(refused) => json!({ "refused": refusal(refused) }),
    }
}

/// What safety says of a group.
pub(super) fn account_group(verdict: &GroupVerdict) -> Value {
    match verdict {
        GroupVerdict::Allowed(plan) => json!({ "group": group(plan) }),
        GroupVerdict::Refused(refused) => {
            json!({ "refused": refused.iter().map(refusal).collect::<Vec<_>>() })
        }
    }
}

/// Why no draft could be made.
pub(super) fn account_error(error: &PlanError) -> Value {
    json!({ "no_draft": format!("{error:?}") })
}

fn texts<T: std::fmt::Debug>(items: &[T]) -> Value {
    items
        .iter()
        .map(|item| Value::from(format!("{item:?}")))
        .collect()
}

fn body(ends: Ends<BodyMass>) -> Value {
    json!({ "least": ends.least.to_kg(), "likely": ends.likely.to_kg(), "most": ends.most.to_kg() })
}

fn dry(ends: Ends<DryMatter>) -> Value {
    json!({ "least": ends.least.to_kg(), "likely": ends.likely.to_kg(), "most": ends.most.to_kg() })
}

fn allowed(plan: &Plan) -> Value {
    let mut value = planned(plan.planned());
    if let Value::Object(map) = &mut value {
        map.insert("cautions".to_owned(), texts(plan.cautions()));
    }
    value
}

fn refusal(refused: &Refused) -> Value {
    json!({
        "animal": refused.draft.animal.name,
        "why": texts(&refused.why),
        "vet": refused.vet.map(|urgency| format!("{urgency:?}")),
        "meanwhile": texts(&refused.meanwhile),
    })
}

fn group(plan: &GroupPlan) -> Value {
    let draft = plan.planned();
    json!({
        "name": draft.name,
        "forage_kg_dry": draft.forage.to_kg(),
        "places": draft.places,
        "risk": format!("{:?}", draft.risk),
        "strictest": draft.strictest.as_str(),
        "separate": texts(&draft.separate),
        "floor_by": draft.floor_by.as_str(),
        "raised_by": draft.raised.as_ref().map(|raised| raised.factor),
        "longest_wait_h": draft.layout.longest_h,
        "members": draft.members.iter().zip(plan.members()).map(|(share, member)| json!({
            "share_kg_dry": dry(share.share),
            "level_percent": {
                "least": share.level.least.to_percent(),
                "likely": share.level.likely.to_percent(),
                "most": share.level.most.to_percent(),
            },
            "plan": allowed(member),
        })).collect::<Vec<_>>(),
    })
}

fn planned(draft: &Draft) -> Value {
    let weight = Ends::new(draft.weight.low, draft.weight.value, draft.weight.high);
    let allowance = &draft.allowance;
    let energy = &draft.energy;
    json!({
        "animal": draft.animal.name,
        "day": draft.day.to_string(),
        "rules": draft.rules,
        "phase": format!("{:?}", draft.animal.phase),
        "weight_kg": body(weight),
        "weight_method": format!("{:?}", draft.weight.method),
        "target_kg": draft.target.as_ref().map(|target| json!({
            "low": target.low.to_kg(), "value": target.value.to_kg(), "high": target.high.to_kg(),
            "aim": format!("{:?}", target.aim),
        })),
        "risk": format!("{:?}", draft.risk.level),
        "risk_because": texts(&draft.risk.factors),
        "vet_list": texts(&draft.vet_list),
        "allowance": {
            "level_percent": allowance.level.to_percent(),
            "start_percent": allowance.start.to_percent(),
            "floor_percent": allowance.floor.to_percent(),
            "restriction": allowance.is_restriction(),
            "because": texts(&allowance.why),
            "bars": texts(&allowance.bars),
        },
        "raised": texts(&draft.raised),
        "dry_matter_kg": draft.dry_matter.to_kg(),
        "least_dry_matter_kg": draft.least_dry_matter.to_kg(),
        "hays": draft.hays.iter().map(hay).collect::<Vec<_>>(),
        "sugar_of_the_day": draft.sugar.as_ref().map(|sugar| format!("{:?}", sugar.verdict)),
        "energy_mcal": {
            "least": energy.supplied.least.to_mcal(),
            "likely": energy.supplied.likely.to_mcal(),
            "most": energy.supplied.most.to_mcal(),
            "need": energy.need.map(crate::units::Energy::to_mcal),
            "verdict": format!("{:?}", energy.verdict),
        },
        "hay_alone": lines(&draft.hay_alone),
        "buckets": draft.buckets.iter().map(|line| json!({
            "name": line.name,
            "typical": line.typical,
            "g_a_day": line.dose.a_day.to_kg() * 1000.0,
            "feeds": line.dose.feeds,
            "decided_by": match line.dose.decided_by {
                DecidedBy::Need(nutrient) => nutrient.key(),
                DecidedBy::Rate => "rate",
                DecidedBy::Ration => "ration",
            },
        })).collect::<Vec<_>>(),
        "with_buckets": lines(&draft.with_buckets),
        "water_l_at_least": draft.water.least.to_l(),
        "salt_g": draft.salt_g,
        "nets": draft.layout.hangings.iter().map(|hanging| json!({
            "at": hanging.visit.format("%H:%M").to_string(),
            "kg_weighed": hanging.as_fed.to_kg(),
            "kg_dry": hanging.dry.to_kg(),
        })).collect::<Vec<_>>(),
        "longest_gap_h": draft.layout.longest_h,
        "likely_gap_h": draft.layout.likely_h,
        "gap": format!("{:?}", draft.layout.verdict),
        "mends": texts(&draft.mends),
        "grass": grass(&draft.grass),
        "work": format!("{:?}", draft.work),
        "look_over_every_days": draft.watch.look_over_days,
        "review": format!("{:?}", draft.watch.review),
        "would_change_most": texts(&draft.levers),
        "findings": texts(&draft.assessed),
        "sources": texts(draft.from.sources()),
    })
}

fn grass(line: &GrassLine) -> Value {
    let GrassLine::Counted(day) = line else {
        return json!(format!("{line:?}"));
    };
    let room = &day.room;
    json!({
        "minutes": room.time.to_minutes(),
        "asked_minutes": room.asked.to_minutes(),
        "shortened": texts(&room.shortened),
        "kg_dry": [room.grass.least.to_kg(), room.grass.likely.to_kg(), room.grass.most.to_kg()],
        "hay_less_kg_dry": room.hay_less.to_kg(),
    })
}

fn hay(hay: &HayLine) -> Value {
    json!({
        "lot": hay.name,
        "class": format!("{:?}", hay.class),
        "fed": format!("{:?}", hay.fed),
        "part": hay.part,
        "kg_dry_eaten": hay.eaten.to_kg(),
        "kg_weighed_out": hay.weigh_out.to_kg(),
        "kg_weighed_out_unsoaked": hay.weigh_out_unsoaked.to_kg(),
        "as_it_comes": hay.as_it_comes.as_ref().map(|judged| format!("{:?}", judged.verdict)),
        "as_fed": hay.as_fed.as_ref().map(|judged| format!("{:?}", judged.verdict)),
        "doubts": hay.as_fed.as_ref().map(|judged| texts(&judged.doubts)),
        "ways_out": hay.as_fed.as_ref().map(|judged| texts(&judged.ways_out)),
        "energy_mcal_per_kg_dry": hay.energy.value.to_mcal_per_kg(),
        "hazards": texts(&hay.hazards),
    })
}

/// One entry a nutrient: its standing and the amounts in its own unit.
fn lines(lines: &[Line]) -> Value {
    let of = |line: &Line| {
        let in_unit = |amount| line.nutrient.in_unit(amount);
        let standing = match line.standing {
            Standing::Within => json!("within"),
            Standing::Short { by } => json!({ "short_by": in_unit(by) }),
            Standing::Over { most } => json!({ "over": in_unit(most) }),
            Standing::NotKnown => json!("not known"),
        };
        json!({
            "supplied": line.supplied.and_then(in_unit),
            "partly_unknown": line.partly_unknown,
            "need": in_unit(line.need),
            "unit": format!("{:?}", line.nutrient.unit()),
            "standing": standing,
        })
    };
    let map: Map<String, Value> = lines
        .iter()
        .map(|line| (line.nutrient.key().to_owned(), of(line)))
        .collect();
    Value::Object(map)
}
