//! Joining the loop: assess, limits, forage, ration and day into one draft.

use super::buckets::{bucket_lines, decided_doses, with_buckets};
use super::draft::{Draft, EnergyLine};
use super::error::PlanError;
use super::grass::{self, Beside};
use super::hay::{self, Feeding, Floors};
use super::input::{PlanFor, Scored, Soaked, Soaking};
use super::levers::levers;
use super::work::work;
use crate::animal::{State, VetWord, risk};
use crate::assess::{self, ConditionRange, DatedWeight, Target, best};
use crate::day::{self, DayNeeds, lay_out, mends};
use crate::forage::ForageKind;
use crate::limits::{
    self, Allowance, AllowanceFor, ConditionScore, Ends, NeedFor, Needs, Nutrient, Offer,
    RULES_VERSION, Stage, Weighings, allowance, energy_floor, judge_cap, judge_energy, meal_limit,
    needs, salt_for, straw_cap, sugar_limits, vet_list, water_need,
};
use crate::ration::{Line, Part, balance, dose, typical_balancer};
use crate::soak::{SoakTimes, timeline};
use crate::units::{AsFed, DryMatter, Energy, EnergyDensity, Instant, NutrientMass, show};

/// Makes a draft. It is no plan yet: [`crate::safety::judge`] has the last word.
///
/// # Errors
/// Something is missing or cannot be used; see [`PlanError`].
#[allow(
    clippy::too_many_lines,
    reason = "the loop in its order, a step a line"
)]
pub fn draft(of: &PlanFor<'_>) -> Result<Draft, PlanError> {
    let weighed = best(of.weights, of.day).ok_or(PlanError::NoWeight)?;
    let scored = last_scored(of);
    let condition = scored.map(|scored| scored.condition);
    let mut assessed = Vec::new();
    let target = target(of, weighed, scored, &mut assessed);
    let risk = risk(
        of.animal,
        condition.map(ConditionRange::high),
        of.crest.map(|crest| f64::from(crest.score())),
    );
    let allowance = allowance(&allowance_for(of, weighed, target.as_ref(), &scores(of)))?;
    let (needs, needed) = needs(&NeedFor {
        kind: of.animal.kind,
        stage: Stage::on(of.animal, of.day),
        work: of.animal.work,
        current: weighed.weight.value,
        target: target.as_ref().map(|target| target.value),
    })?;
    let hay_risk = of.strictest.unwrap_or(&risk).clone();
    let limits = sugar_limits(hay_risk.level);
    let feedings = hay::feedings(of, &hay_risk, limits.as_ref())?;
    let vets_word = limits::lowest_level_word(of.words, &of.animal.id, of.day).is_some();
    let meal = meal_limit(risk.level, weighed.weight.low)?;
    let floor_energy = energy_floor(of.animal.kind, weighed.weight.high)?.map(|floor| {
        if vets_word {
            floor.never_under
        } else {
            floor.without_vet
        }
    });

    // First all of it as hay, to see what hay alone is short of; then the balancer takes its place in the dry matter.
    let all = allowance.dry_matter();
    let hay_alone = hay_balance(&feedings, all, &needs);
    let typical = typical_balancer();
    let foods = if let Some(decided) = of.ration {
        decided_doses(decided, &meal)
    } else {
        let food = of.balancer.unwrap_or(&typical);
        let dose = dose(&hay_alone, food, weighed.weight.value, &meal);
        dose.map(|dose| (food, dose)).into_iter().collect()
    };
    let bought: DryMatter = foods
        .iter()
        .map(|(food, dose)| dose.a_day.dry(food.dry))
        .sum();
    let floors = Floors {
        dry_matter: allowance.floor_dry_matter() - bought,
        energy: floor_energy,
    };
    // What was decided for an animal that may eat more comes on top of its hay.
    let on_top = of.ration.is_some() && allowance.offer == Offer::AtLeast;
    let hay_of_it = if on_top { all } else { all - bought };
    let amounts = hay::amounts(&feedings, hay_of_it, &floors)?;
    let forage = whole_steps(&amounts, &floors, &allowance);
    let with_buckets = with_buckets(&feedings, forage, &foods, &needs);
    let buckets = bucket_lines(foods, &with_buckets, of.ration.is_some());

    let soaks = feedings.iter().any(|feeding| feeding.washed_out.is_some());
    let soaked = match feedings.iter().all(|feeding| feeding.washed_out.is_some()) {
        true => Soaked::All,
        false if soaks => Soaked::Some,
        false => Soaked::None,
    };
    let rate = of.net.rate(weighed.weight.value, soaked);
    let day_needs = DayNeeds {
        visits: of.visits,
        forage,
        dry: amounts.reaches,
        rate: &rate,
        most_at_once: of.net.most_at_once,
        eaten_within_h: soaks.then(|| eaten_within_h(&of.soaking)),
        aways: &[],
        straw_part: straw_part(of, &amounts, floor_energy),
    };
    let could_be_straw = day_needs.straw_part;
    let layout = lay_out(&day_needs)?;
    let mends = mends(&day_needs, layout.longest_h);
    let hung: DryMatter = layout.hangings.iter().map(|hanging| hanging.dry).sum();
    let hays = hay::lines(&feedings, hung);
    let sugar = hay::whole_day(&feedings, hung, limits.as_ref());
    let verdict = judge_energy(
        of.animal.kind,
        of.animal.state,
        weighed.weight.high,
        amounts.energy.least,
        vets_word,
    )?;
    let dry_matter = hung + bought;
    let least_dry_matter = amounts.least + bought;
    let grass = grass::line(
        of,
        &Beside {
            risk: &hay_risk,
            weight: &weighed.weight,
            dry: Ends::new(
                least_dry_matter,
                dry_matter,
                hay::most(&feedings, hung) + bought,
            ),
            forage: hung,
            energy: EnergyDensity::mcal_per_kg(
                amounts.energy.least.to_mcal() / amounts.least.to_kg(),
            ),
            measured: allowance.offer == Offer::Measured,
            sugar: sugar.as_ref(),
        },
    );
    let from = weighed
        .weight
        .from
        .clone()
        .and(&allowance.from)
        .and(&layout.from)
        .and(&amounts_from(&feedings));
    let mut draft = Draft {
        rules: RULES_VERSION,
        now: of.now,
        day: of.day,
        animal: of.animal.clone(),
        weight: weighed.weight.clone(),
        vet_list: vet_list(of.animal, of.day, condition.map(ConditionRange::low)),
        look_over: of.look_over,
        words: holding(of),
        said: of.said,
        too_fast: of.too_fast,
        straw: straw(of, hung),
        could_be_straw,
        energy: EnergyLine {
            supplied: amounts.energy,
            need: needs.energy.as_ref().map(|need| need.energy),
            verdict,
            from: needs
                .energy
                .as_ref()
                .map(|need| need.from.clone())
                .unwrap_or_default(),
        },
        water: water_need(
            weighed.weight.value,
            of.animal.state,
            of.animal.work,
            of.weather,
            true,
        )?,
        salt_g: salt(&needs).to_g(),
        grass,
        work: work(of).line,
        watch: limits::intervals(of.animal.phase),
        levers: Vec::new(),
        least_dry_matter,
        raised: amounts.raised,
        target,
        condition,
        risk,
        hay_risk,
        allowance,
        hays,
        soaking: soaks.then_some(of.soaking),
        dry_matter,
        sugar,
        hay_alone,
        buckets,
        with_buckets,
        meal,
        layout,
        mends,
        assessed,
        needs,
        needed,
        from,
    };
    draft.levers = levers(&draft, of);
    Ok(draft)
}

/// The score last known on the day.
fn last_scored<'a>(of: &PlanFor<'a>) -> Option<&'a Scored> {
    of.condition
        .iter()
        .filter(|scored| scored.on <= of.day)
        .max_by_key(|scored| scored.on)
}

/// The target, from what it weighed when it was scored: what it loses afterwards takes no target with it. An animal that
/// has none gets none, with no guess in its place.
fn target(
    of: &PlanFor<'_>,
    weighed: &DatedWeight,
    scored: Option<&Scored>,
    assessed: &mut Vec<assess::Finding>,
) -> Option<Target> {
    let scored = scored?;
    let then = best(of.weights, scored.on).unwrap_or(weighed);
    let (target, findings) =
        assess::target(of.animal, &then.weight, scored.condition, of.tape, of.day).ok()?;
    assessed.extend(findings);
    Some(target)
}

/// Scores for the rules of restriction: site by site only, at the thin end of a range; one answer about the ribs counts
/// only when it says thin, for that protects the animal.
fn scores(of: &PlanFor<'_>) -> Vec<ConditionScore> {
    of.condition
        .iter()
        .filter(|scored| {
            scored.by_sites || scored.condition.low() < *limits::published::CONDITION_THIN
        })
        .map(|scored| ConditionScore {
            on: scored.on,
            score: scored.condition.low(),
        })
        .collect()
}

fn allowance_for<'a>(
    of: &PlanFor<'a>,
    weighed: &DatedWeight,
    target: Option<&Target>,
    condition: &'a [ConditionScore],
) -> AllowanceFor<'a> {
    let weight = &weighed.weight;
    let (on_scale, by_tape) = of.weights.iter().filter(|dated| dated.day <= of.day).fold(
        (0, 0),
        |(scale, tape), dated| {
            if dated.weight.is_scale() {
                (scale + 1, tape)
            } else {
                (scale, tape + 1)
            }
        },
    );
    AllowanceFor {
        animal: of.animal,
        day: of.day,
        weight: Ends::new(weight.low, weight.value, weight.high),
        weighings: Weighings { on_scale, by_tape },
        target: target.map(|target| Ends::new(target.lowest, target.value, target.highest)),
        condition,
        look_over_clean: of.look_over.signs.clean(),
        days_at_start: of.days_at_start,
        words: of.words,
        now: of.level_now,
        asked: of.asked,
    }
}

fn holding(of: &PlanFor<'_>) -> Vec<VetWord> {
    of.words
        .iter()
        .filter(|word| word.animal == of.animal.id && word.holds_on(of.day))
        .cloned()
        .collect()
}

fn hay_balance(feedings: &[Feeding<'_>], forage: DryMatter, needs: &Needs) -> Vec<Line> {
    balance(&parts(feedings, forage), &needs.rows)
}

pub(super) fn parts<'a>(feedings: &'a [Feeding<'_>], forage: DryMatter) -> Vec<Part<'a>> {
    feedings
        .iter()
        .map(|feeding| Part::Forage(forage * feeding.offer.part, &feeding.supply))
        .collect()
}

/// A floor is rounded up to a whole step of the scale before the day is laid out; a ceiling is rounded down by it, unless
/// the step would take the least of it under a floor: the floor goes first.
fn whole_steps(amounts: &hay::Amounts, floors: &Floors, allowance: &Allowance) -> DryMatter {
    let forage = amounts.forage;
    let step = AsFed::kg(*day::published::SCALE_STEP);
    let weighed = forage.as_fed(amounts.reaches);
    let part = show::step_down(weighed, step) / weighed;
    let under = amounts.least * part < floors.dry_matter
        || floors
            .energy
            .is_some_and(|floor| amounts.energy.least * part < floor);
    if allowance.offer == Offer::AtLeast || !amounts.raised.is_empty() || under {
        show::step_up(weighed, step).dry(amounts.reaches)
    } else {
        forage
    }
}

fn straw(of: &PlanFor<'_>, forage: DryMatter) -> limits::CapVerdict {
    let part: f64 = of
        .hays
        .iter()
        .filter(|offer| offer.lot.class.kind() == ForageKind::Straw)
        .map(|offer| offer.part)
        .sum();
    judge_cap(
        forage * part,
        forage,
        straw_cap(of.animal.kind, of.animal.health.teeth).most,
    )
}

/// The part of the forage that could be straw on top of what is: within the cap of its kind and teeth, and as far as the
/// least of the energy keeps its floor with straw counted for none. Only for a grown animal; nothing under a step of
/// five percent is worth the changeover.
fn straw_part(
    of: &PlanFor<'_>,
    amounts: &hay::Amounts,
    floor_energy: Option<Energy>,
) -> Option<f64> {
    if of.animal.state != State::Adult {
        return None;
    }
    let held: f64 = of
        .hays
        .iter()
        .filter(|offer| offer.lot.class.kind() == ForageKind::Straw)
        .map(|offer| offer.part)
        .sum();
    let cap = straw_cap(of.animal.kind, of.animal.health.teeth)
        .most
        .to_fraction()
        - held;
    let by_energy = floor_energy.map_or(1.0, |floor| 1.0 - floor / amounts.energy.least);
    let part = cap.min(by_energy);
    let step = *day::published::STRAW_STEP;
    let part = (part / step).floor() * step;
    (step <= part).then_some(part)
}

fn salt(needs: &Needs) -> NutrientMass {
    needs
        .of(Nutrient::Sodium)
        .map_or(NutrientMass::ZERO, |need| match need.amount {
            limits::Amount::Mass(sodium) => salt_for(sodium),
            limits::Amount::Iu(_) => NutrientMass::ZERO,
        })
}

fn amounts_from(feedings: &[Feeding<'_>]) -> crate::sources::Provenance {
    feedings
        .iter()
        .fold(crate::sources::Provenance::new(), |from, feeding| {
            from.and(&feeding.supply.provenance)
                .and(&feeding.sugar.provenance)
        })
}

/// Hours in which a soaked net must be eaten: from drained to thrown away.
pub(crate) fn eaten_within_h(soaking: &Soaking) -> f64 {
    let times = SoakTimes::started(Instant::from_ms(0));
    let line = timeline(soaking.recipe, &times, soaking.air);
    line.throw_away.since(line.drained).to_hours()
}
