//! The look-over: one plain question a line, nothing preset; what is measured beside it; and what the vet is told.

mod beside;
mod vet;

use crate::device::clock;
use crate::form::Form;
use crate::parts::{
    self, Action, ActionRow, AnswerWords, Back, Caution, Frame, FrameKind, Press, Question, Rank,
    Sentence, StopBlock, WideKey,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use beside::{AtOnce, Eating, Flags, Measured};
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Answer, Health};
use tussock_core::plan::{AtRest, Signs};
use tussock_core::units::{LocalDate, Zone};
use tussock_flow::forms::look_over::{self, SeenNow, WrongReading, all_normal, answer_of, text_of};
use tussock_flow::routes::Route;
use tussock_flow::views::beside::Stop;
use tussock_flow::views::not_eating::{NotEating, needs, not_eating};
use tussock_flow::words::{
    AnimalWords, BesideWords, ConditionWords, English, HorsesWords, LookOverWords, PlanWords,
    SafetyWords, Sign,
};
use vet::ForTheVet;

const fn key_of(answer: Answer) -> parts::Answer {
    match answer {
        Answer::Yes => parts::Answer::Yes,
        Answer::No => parts::Answer::No,
        Answer::NotKnown => parts::Answer::NotLookedAt,
    }
}

const fn answer_of_key(key: parts::Answer) -> Answer {
    match key {
        parts::Answer::Yes => Answer::Yes,
        parts::Answer::No => Answer::No,
        parts::Answer::NotLookedAt => Answer::NotKnown,
    }
}

fn today() -> LocalDate {
    clock::DeviceZone.to_local(clock::now()).date
}

/// The animal and its form: what is said so far.
#[derive(Clone, Copy)]
struct Look {
    words: English,
    form: Form,
    held: Memo<Option<NotEating>>,
    wrong: RwSignal<Vec<WrongReading>>,
}

impl Look {
    fn signs(self) -> Signs {
        look_over::signs(|field| self.form.held(field).unwrap_or_default())
    }

    /// The text of a field, as it changes.
    fn text(self, field: &str) -> String {
        self.form.held(field).unwrap_or_default()
    }

    /// Health as said so far.
    fn health(self, held: &Health) -> Health {
        look_over::health(held, |field| self.text(field), clock::now(), today())
    }

    /// What was measured so far.
    fn at_rest(self) -> AtRest {
        look_over::at_rest(|field| self.text(field), today(), clock::now())
    }

    /// Something said of the animal by all that is seen so far.
    fn seen<T>(self, of: impl FnOnce(&NotEating, &SeenNow<'_>) -> Option<T>) -> Option<T> {
        let (signs, at_rest) = (self.signs(), self.at_rest());
        self.held.with(|held| {
            let held = held.as_ref()?;
            let health = self.health(&held.animal.health);
            let seen = SeenNow {
                health: &health,
                signs: &signs,
                at_rest: &at_rest,
                day: today(),
                now: clock::now(),
            };
            of(held, &seen)
        })
    }

    fn answer(self, field: &'static str) -> Signal<Option<Answer>> {
        Signal::derive(move || answer_of(&self.form.held(field).unwrap_or_default()))
    }

    fn say(self, field: &'static str) -> Callback<Answer> {
        Callback::new(move |answer| self.form.set(field, text_of(answer).to_owned()))
    }
}

/// Looking one animal over.
#[component]
pub fn LookOver(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::LookOver(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || needs(&id.get_value(), since));
    let held = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => not_eating(&shelf, &id.get_value(), now, &clock::DeviceZone),
        _ => None,
    });
    let look = Look {
        words,
        form,
        held,
        wrong: RwSignal::new(Vec::new()),
    };
    let name = Signal::derive(move || {
        held.with(|held| held.as_ref().map(|held| held.animal.name.clone()))
            .unwrap_or_default()
    });
    let stop = Memo::new(move |_| look.seen(|held, seen| seen.stop(&held.animal)));
    let cautions = Memo::new(move |_| look.seen(|held, seen| Some(seen.cautions(&held.animal))));
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let write = move |signs: Signs| {
        let Some(NotEating {
            animal, held: body, ..
        }) = held.get_untracked()
        else {
            return;
        };
        let measured = match look_over::readings(|field| form.now(field)) {
            Ok(measured) => measured,
            Err(faults) => return look.wrong.set(faults),
        };
        look.wrong.set(Vec::new());
        let health = untrack(|| look.health(&animal.health));
        let act = look_over::act(&animal, &body, &signs, health, measured, &form.id("id"));
        busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            busy.try_set(false);
            if done.is_ok() {
                world.go(&Route::Horse(animal.id));
            } else {
                failed.try_set(true);
            }
        });
    };
    let finish = Callback::new(move |()| write(untrack(|| look.signs())));
    let normal = Callback::new(move |()| write(all_normal()));
    let left = Memo::new(move |_| {
        let signs = look.signs();
        Sign::ALL
            .iter()
            .filter(|sign| sign.of(&signs) == Answer::NotKnown)
            .count()
    });
    // Whoever said yes to anything does not mean that all is normal.
    let some_yes = Memo::new(move |_| {
        let signs = look.signs();
        Sign::ALL.iter().any(|sign| sign.of(&signs) == Answer::Yes)
    });
    let head = move || match stop.get() {
        Some(stop) => view! {
            <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                <p>{words.stop_why(&stop)}</p>
            </StopBlock>
        }
        .into_any(),
        None => view! { <Sentence said=Signal::derive(move || words.look_over(&name.get())) /> }
            .into_any(),
    };
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <Show when=move || 0 < left.get()>
                <p class="soft small">{move || words.lines_left(left.get())}</p>
            </Show>
            <Show when=move || look.wrong.with(|wrong| !wrong.is_empty())>
                <p class="error" role="alert">{words.reading_wrong()}</p>
            </Show>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.finish_look_over() press=finish busy=Signal::derive(move || busy.get() || held.with(Option::is_none)) />
            </ActionRow>
        }
    };
    let answers = AnswerWords {
        no: words.answer(Answer::No).to_owned(),
        yes: words.answer(Answer::Yes).to_owned(),
        not_looked_at: words.not_looked_at().to_owned(),
    };
    let lines = Sign::ALL
        .iter()
        .map(|sign| {
            let field = look_over::field(*sign);
            let chosen = look.answer(field);
            let say = look.say(field);
            view! {
                <Question
                    text=words.sign_question(*sign)
                    words=answers.clone()
                    chosen=Signal::derive(move || chosen.get().map(key_of))
                    on_answer=Callback::new(move |key| say.run(answer_of_key(key)))
                />
                <p class="hint">{words.sign_how(*sign)}</p>
            }
        })
        .collect_view();
    let told = move || {
        cautions
            .get()
            .unwrap_or_default()
            .iter()
            .map(|caution| {
                let said = words.caution(caution);
                let why = said.why.unwrap_or_default();
                view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }
            })
            .collect_view()
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            {head}
            <Unread shelf />
            {draft_line(form)}
            {move || {
                matches!(stop.get(), Some(Stop::Vet(..))).then(|| view! { <ForTheVet look animal=id.get_value() /> })
            }}
            {told}
            <AtOnce look />
            // It stands there once it can do something: a tap is never lost.
            <Show when=move || !some_yes.get() && held.with(Option::is_some)>
                <WideKey says=words.all_normal() means=words.all_normal_means() act=normal />
            </Show>
            {lines}
            <Measured look />
            <h2>{words.anything_else()}</h2>
            <Eating look animal=id.get_value() />
            <Flags look />
        </Frame>
    }
}
