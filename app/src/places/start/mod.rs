//! Six answers to a first plan.

mod answers;

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press, Sentence,
};
use crate::places::{Saving, draft_line};
use crate::world::World;
use answers::{answers, ids, named, of_list, say};
use leptos::prelude::*;
use tussock_core::forage::ForageClass;
use tussock_core::log::Kind;
use tussock_core::units::Zone;
use tussock_flow::forms::start::{Asked, Ever, RIBS, Sort, Visits, Wrong, hays, the_same_lot};
use tussock_flow::forms::weight::echo_length;
use tussock_flow::routes::Route;
use tussock_flow::rows::Range;
use tussock_flow::words::{AssessWords, English, HorsesWords, StartWords, UnitWords};

/// One scrolling form of keys and three fields; then the plan.
#[allow(clippy::too_many_lines, reason = "one form, a field a line")]
#[component]
pub fn Start() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Start.to_string());
    let lots = world.shelf(|| {
        vec![Range::Kind {
            kind: Kind::Lot.word().to_owned(),
            from: 0,
            limit: 1,
        }]
    });
    let wrong = RwSignal::new(Vec::<Wrong>::new());
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let typed = answers(form);
        let mut ids = ids(form, world);
        let same = lots.with_untracked(|lots| {
            let shelf = lots.as_ref()?.as_ref().ok()?;
            the_same_lot(shelf, typed.hay?, &named(&typed).lot)
        });
        if let Some(lot) = same {
            ids.lot = lot;
        }
        let today = DeviceZone.to_local(clock::now()).date;
        match typed.act(&ids, &named(&typed), today) {
            Err(faults) => wrong.set(faults),
            Ok(act) => {
                wrong.set(Vec::new());
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Plan(ids.animal));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let foot = move || {
        view! {
            <Show when=move || wrong.with(|wrong| !wrong.is_empty())>
                <p class="error" role="alert">{words.still_open()}</p>
            </Show>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Home.to_string()) }>
                <Action says=words.make_first_plan() press=save busy=busy />
            </ActionRow>
        }
    };
    let girth = form.text("girth");
    let hays: Vec<ForageClass> = hays().collect();
    let ribs = RIBS;
    let visit_offers: Vec<Offer<Visits>> = Visits::ALL
        .iter()
        .map(|visits| offer_of(*visits, words))
        .collect();
    view! {
        <Frame kind=FrameKind::Flow what=words.first_plan() foot=foot>
            <Sentence said=words.six_answers() />
            {draft_line(form)}
            <Choice
                legend=words.which_sort()
                hint=say(wrong, Asked::Sort, words.rough_height_hint())
                offers=offers(Sort::ALL, |it| words.sort(it).to_owned())
                chosen=of_list(form, "sort", Sort::ALL.to_vec())
                on_choose=chooses(form, "sort", Sort::ALL.to_vec())
            />
            <Field
                label=words.name()
                hint=words.name_may_wait()
                value=form.text("name")
                on_input=form.typed("name")
                error=answers::name_error(wrong)
            />
            <Field
                label=words.age_label()
                value=form.text("age")
                on_input=form.typed("age")
                unit=words.years()
                error=answers::age_error(wrong)
                keyboard=Keyboard::Numeric
            />
            <Field
                label=words.heart_girth()
                hint=words.heart_girth_hint()
                value=girth
                on_input=form.typed("girth")
                error=answers::girth_error(wrong)
                echo=Signal::derive(move || echo_length(&girth.get()).map(|length| words.length(length)))
                keyboard=Keyboard::Decimal
            />
            <Choice
                legend=words.ribs_question()
                hint=say(wrong, Asked::Ribs, words.ribs_hint())
                offers=offers(ribs, |it| words.ribs(it).to_owned())
                chosen=of_list(form, "ribs", ribs.to_vec())
                on_choose=chooses(form, "ribs", ribs.to_vec())
            />
            <Choice
                legend=words.ever_question()
                hint=say(wrong, Asked::Ever, "")
                offers=offers(Ever::ALL, |it| words.ever(it).to_owned())
                chosen=of_list(form, "ever", Ever::ALL.to_vec())
                on_choose=chooses(form, "ever", Ever::ALL.to_vec())
            />
            <Choice
                legend=words.hay_question()
                hint=say(wrong, Asked::Hay, words.hay_hint())
                offers=offers(&hays, |it| words.hay_offer(it))
                chosen=of_list(form, "hay", hays.clone())
                on_choose=chooses(form, "hay", hays)
            />
            <Choice
                legend=words.visits_question()
                hint=say(wrong, Asked::Visits, words.visits_hint())
                offers=visit_offers
                chosen=of_list(form, "visits", Visits::ALL.to_vec())
                on_choose=chooses(form, "visits", Visits::ALL.to_vec())
            />
        </Frame>
    }
}

/// Offers with their words.
fn offers<T: Copy>(list: &[T], word: impl Fn(T) -> String) -> Vec<Offer<T>> {
    list.iter().map(|it| Offer::new(*it, word(*it))).collect()
}

/// A number of visits with the times that stand for it.
fn offer_of(visits: Visits, words: English) -> Offer<Visits> {
    let times: Vec<String> = visits
        .times()
        .into_iter()
        .map(|time| words.time(time))
        .collect();
    Offer::new(visits, words.visit_count(visits)).with(times.join(", "))
}

/// Keeps the answer of a key in the draft.
fn chooses<T>(form: Form, field: &'static str, offers: Vec<T>) -> Callback<T>
where
    T: PartialEq + Send + Sync + 'static,
{
    Callback::new(move |chosen: T| {
        form.set(field, tussock_flow::forms::start::key(&offers, &chosen));
    })
}
