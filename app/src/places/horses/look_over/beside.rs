//! What is asked beside the lines of a look-over: grain and lush grass, what is measured, whether it eats, what is true of
//! it now.

use super::{Look, today};
use crate::device::clock;
use crate::parts::{Choice, Offer, Quiet, QuietRow, Several};
use crate::places::horses::vital_field::VitalField;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Answer, Handful};
use tussock_core::safety::Vital;
use tussock_flow::forms::look_over::{
    AGAIN, DULL, EATING, Flag, HANDFUL, HANDFULS, LAST_EATING, LAST_EATING_FROM, SeenEating,
    handful_of, text_of,
};
use tussock_flow::forms::not_eating::{field as field_of, reading};
use tussock_flow::routes::Route;
use tussock_flow::words::{AnimalWords, LookOverWords, NotEatingWords, UnitWords};

/// Whether it eats; and where it does not, what the vet will ask.
#[component]
pub(super) fn Eating(look: Look, animal: AnimalId) -> impl IntoView {
    let words = look.words;
    let form = look.form;
    let sheet = StoredValue::new(Route::NotEating(animal).to_string());
    let eats = look.answer(EATING);
    let off = Memo::new(move |_| eats.get() == Some(Answer::No));
    let seen = Signal::derive(move || SeenEating::of(&form.held(LAST_EATING).unwrap_or_default()));
    let handful = Signal::derive(move || handful_of(&form.held(HANDFUL).unwrap_or_default()));
    let on_seen = Callback::new(move |seen: SeenEating| {
        form.set(LAST_EATING, seen.text().to_owned());
        form.set(LAST_EATING_FROM, clock::now().to_ms().to_string());
    });
    let on_handful = Callback::new(move |handful: Handful| {
        if let Some((_, text)) = HANDFULS.iter().find(|(offered, _)| *offered == handful) {
            form.set(HANDFUL, (*text).to_owned());
        }
    });
    view! {
        <Choice
            legend=words.does_it_eat()
            offers=vec![Offer::new(Answer::Yes, words.eats()), Offer::new(Answer::No, words.off_its_feed())]
            chosen=eats
            on_choose=look.say(EATING)
        />
        <Show when=move || off.get()>
            <QuietRow>
                <Quiet says=words.will_not_eat() press=sheet.get_value() />
            </QuietRow>
            <Choice
                legend=words.last_seen_eating()
                offers=SeenEating::ALL.into_iter().map(|seen| Offer::new(seen, words.seen_eating(seen))).collect()
                chosen=seen
                on_choose=on_seen
            />
            <Choice
                legend=words.a_handful()
                offers=HANDFULS.into_iter().map(|(handful, _)| Offer::new(handful, words.handful(handful))).collect()
                chosen=handful
                on_choose=on_handful
            />
            <Choice
                legend=words.is_it_dull()
                offers=vec![
                    Offer::new(Answer::No, words.answer(Answer::No)),
                    Offer::new(Answer::Yes, words.answer(Answer::Yes)),
                    Offer::new(Answer::NotKnown, words.not_looked_at()),
                ]
                chosen=look.answer(DULL)
                on_choose=look.say(DULL)
            />
        </Show>
    }
}

/// What is rung about at once, before signs show.
#[component]
pub(super) fn AtOnce(look: Look) -> impl IntoView {
    let words = look.words;
    view! {
        {keys(look, words.at_once(), Flag::is_at_once)}
        <p class="hint">{words.at_once_hint()}</p>
    }
}

/// What else changes what it may have.
#[component]
pub(super) fn Flags(look: Look) -> impl IntoView {
    keys(look, look.words.flags(), |flag| !flag.is_at_once())
}

/// Temperature, pulse and breathing, with what is usual for its kind.
#[component]
pub(super) fn Measured(look: Look) -> impl IntoView {
    let words = look.words;
    let field = move |vital: Vital| {
        let name = field_of(vital);
        let text = look.form.text(name);
        let normal = move || {
            look.held
                .with(|held| held.as_ref().and_then(|held| held.normal(vital)))
        };
        let hint = Signal::derive(move || {
            let known = look.held.with(Option::is_some);
            known.then(|| words.vital_hint(vital, normal().as_ref()))
        });
        let echo = Signal::derive(move || {
            let reading = reading(vital, &text.get()).ok().flatten()?;
            Some(words.vital_stands(vital, reading, &normal()?))
        });
        let error = Signal::derive(move || {
            look.wrong.with(|wrong| {
                let (_, error) = wrong.iter().find(|(of, _)| *of == vital)?;
                Some(words.parse_error(error))
            })
        });
        view! { <VitalField vital form=look.form name hint echo error /> }
    };
    view! {
        <h2>{words.vitals()}</h2>
        {Vital::ALL.map(field).into_iter().collect_view()}
        <p class="hint">{words.vitals_are_no_diagnosis()}</p>
    }
}

/// Keys that stand on or off, as the animal carries them until somebody touches one. A flag of another day shows that day,
/// and beside it stands the key that says it came again today.
fn keys(look: Look, legend: &'static str, which: fn(Flag) -> bool) -> impl IntoView {
    let words = look.words;
    let on = Signal::derive(move || {
        let Some(animal) = look.held.get().map(|held| held.animal) else {
            return Vec::new();
        };
        let health = look.health(&animal.health);
        let held = Flag::ALL
            .into_iter()
            .filter(move |flag| which(*flag) && flag.held(&health));
        let again = Flag::ALL.into_iter().filter(move |flag| {
            which(*flag) && look.form.held(flag.field()).as_deref() == Some(AGAIN)
        });
        held.map(|flag| (flag, false))
            .chain(again.map(|flag| (flag, true)))
            .collect::<Vec<_>>()
    });
    let flip = Callback::new(move |((flag, again), on): ((Flag, bool), bool)| {
        let text = match (again, on) {
            (true, true) => AGAIN,
            (true, false) => "",
            (false, true) => text_of(Answer::Yes),
            (false, false) => text_of(Answer::No),
        };
        look.form.set(flag.field(), text.to_owned());
    });
    let offers = Memo::new(move |_| {
        let health = look.held.get().map(|held| held.animal.health);
        let before = |flag: Flag| {
            let day = flag.day(health.as_ref()?, &clock::DeviceZone)?;
            (day < today()).then_some(day)
        };
        Flag::ALL
            .into_iter()
            .filter(|flag| which(*flag))
            .flat_map(|flag| match before(flag) {
                Some(day) => vec![
                    Offer::new((flag, false), words.flag_held(flag)).with(words.flag_on(day)),
                    Offer::new((flag, true), words.flag_again(flag)),
                ],
                None => vec![Offer::new((flag, false), words.flag(flag))],
            })
            .collect::<Vec<_>>()
    });
    move || view! { <Several legend=legend offers=offers.get() chosen=on on_choose=flip /> }
}
