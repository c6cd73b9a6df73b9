//! The look-over: one plain question a line, nothing preset.

use crate::device::clock;
use crate::form::Form;
use crate::parts::{
    self, Action, ActionRow, AnswerWords, Back, Choice, Frame, FrameKind, Offer, Press, Question,
    Rank, Sentence, Several, StopBlock, WideKey,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{Animal, AnimalId, Answer, Handful, Health};
use tussock_core::log::bodies::AnimalV1;
use tussock_core::plan::Signs;
use tussock_core::sources::RecordId;
use tussock_core::units::{LocalDate, Zone};
use tussock_flow::forms::look_over::{
    self, AGAIN, DULL, EATING, Flag, HANDFUL, HANDFULS, LAST_EATING, LAST_EATING_FROM, SeenEating,
    all_normal, answer_of, handful_of, text_of,
};
use tussock_flow::routes::Route;
use tussock_flow::views::{details, horses};
use tussock_flow::words::{
    AnimalWords, BesideWords, English, HorsesWords, LookOverWords, PlanWords, Sign,
};

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
    held: Memo<Option<(Animal, AnimalV1)>>,
}

impl Look {
    fn signs(self) -> Signs {
        look_over::signs(|field| self.form.held(field).unwrap_or_default())
    }

    /// Health as said so far.
    fn health(self, held: &Health) -> Health {
        look_over::health(
            held,
            |field| self.form.held(field).unwrap_or_default(),
            clock::now(),
            today(),
        )
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
    let shelf = world.shelf(move || horses::one_needs(&id.get_value()));
    let held = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => {
            let body = details::held(&shelf, &id.get_value())?;
            Some((body.animal(&RecordId(id.get_value().0)), body))
        }
        _ => None,
    });
    let look = Look { words, form, held };
    let name = Signal::derive(move || {
        held.get()
            .map(|(animal, _)| animal.name)
            .unwrap_or_default()
    });
    let stop = Memo::new(move |_| {
        let (animal, _) = held.get()?;
        let health = look.health(&animal.health);
        look_over::stop(&animal, &health, &look.signs(), clock::now())
    });
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let write = move |signs: Signs| {
        let Some((animal, body)) = held.get_untracked() else {
            return;
        };
        let health = untrack(|| look.health(&animal.health));
        let act = look_over::act(&animal, &body, &signs, health, &form.id("id"));
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
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            {head}
            <Unread shelf />
            {draft_line(form)}
            <Show when=move || !some_yes.get()>
                <WideKey says=words.all_normal() means=words.all_normal_means() act=normal />
            </Show>
            {lines}
            <h2>{words.anything_else()}</h2>
            <Eating look />
            <Flags look />
        </Frame>
    }
}

/// Whether it eats; and where it does not, what the vet will ask.
#[component]
fn Eating(look: Look) -> impl IntoView {
    let words = look.words;
    let form = look.form;
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

/// What changes what it may have: keys that stand on or off, as the animal carries them until somebody touches one. A flag
/// of another day shows that day, and beside it stands the key that says it came again today.
#[component]
fn Flags(look: Look) -> impl IntoView {
    let words = look.words;
    let on = Signal::derive(move || {
        let Some((animal, _)) = look.held.get() else {
            return Vec::new();
        };
        let health = look.health(&animal.health);
        let held = Flag::ALL.into_iter().filter(|flag| flag.held(&health));
        let again = Flag::ALL
            .into_iter()
            .filter(|flag| look.form.held(flag.field()).as_deref() == Some(AGAIN));
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
        let health = look.held.get().map(|(animal, _)| animal.health);
        let before = |flag: Flag| {
            let day = flag.day(health.as_ref()?, &clock::DeviceZone)?;
            (day < today()).then_some(day)
        };
        Flag::ALL
            .into_iter()
            .flat_map(|flag| match before(flag) {
                Some(day) => vec![
                    Offer::new((flag, false), words.flag_held(flag)).with(words.flag_on(day)),
                    Offer::new((flag, true), words.flag_again(flag)),
                ],
                None => vec![Offer::new((flag, false), words.flag(flag))],
            })
            .collect::<Vec<_>>()
    });
    move || view! { <Several legend=words.flags() offers=offers.get() chosen=on on_choose=flip /> }
}
