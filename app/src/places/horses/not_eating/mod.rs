//! An animal that will not eat: a handful is held out, and the call sheet for the vet stands below.

mod sheet;

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Frame, FrameKind, Offer, Press, Rank, Row, Rows,
    Sentence, StopBlock,
};
use crate::places::horses::vital_field::VitalField;
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, Answer, Handful};
use tussock_core::safety::{LastAte, Offered, Vital, WillNotEat};
use tussock_flow::forms::look_over::{DULL, HANDFUL, HANDFULS, answer_of, handful_of, text_of};
use tussock_flow::forms::not_eating::{
    self as form_of, LAST, LAST_FROM, TELEPHONE, Typed, Wrong, last_of, text_of_last,
};
use tussock_flow::routes::Route;
use tussock_flow::views::beside::Stop;
use tussock_flow::views::not_eating::{NotEating as View, dial, needs, not_eating};
use tussock_flow::words::{
    AnimalWords, BesideWords, English, HorsesWords, LookOverWords, NotEatingWords, SafetyWords,
};

/// The animal and what is said of it so far.
#[derive(Clone, Copy)]
struct AtIt {
    world: World,
    form: Form,
    view: Memo<Option<View>>,
    offered: Memo<Option<Offered>>,
    found: Memo<WillNotEat>,
    stop: Memo<Option<Stop>>,
    wrong: RwSignal<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

/// An animal that will not eat.
#[component]
pub fn NotEating(
    /// Which.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open_today(world, Route::NotEating(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let minute = world.minute();
    let since = minute.get_untracked();
    let shelf = world.shelf(move || needs(&id.get_value(), since));
    let view = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => not_eating(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    });
    let offered = Memo::new(move |_| {
        let now = minute.get();
        view.with(|view| {
            let text = |field: &str| form.held(field).unwrap_or_default();
            Some(form_of::offered(view.as_ref()?, text, now, &DeviceZone))
        })
    });
    let found = Memo::new(move |_| {
        let now = minute.get();
        view.with(|view| Some(view.as_ref()?.found(&offered.get()?, now)))
            .unwrap_or(WillNotEat::HoldOutAHandful)
    });
    let stop = Memo::new(move |_| {
        let now = minute.get();
        view.with(|view| view.as_ref()?.stop(&offered.get()?, now))
    });
    let at = AtIt {
        world,
        form,
        view,
        offered,
        found,
        stop,
        wrong: RwSignal::new(Vec::new()),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    let name = Signal::derive(move || at.name());
    let save = Callback::new(move |()| at.save());
    let back = Route::Horse(animal).to_string();
    let foot = move || {
        view! {
            <Show when=move || at.wrong.with(|wrong| wrong.contains(&Wrong::Handful))>
                <p class="error" role="alert">{words.not_eating_wrong(&Wrong::Handful)}</p>
            </Show>
            <Saving failed=at.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action
                    says=words.save_what_it_did()
                    press=save
                    busy=Signal::derive(move || at.busy.get() || at.view.with(Option::is_none))
                />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=name foot=foot>
            {move || at.head(shelf.get().is_none())}
            <Unread shelf />
            {draft_line(form)}
            {move || at.ring()}
            {move || at.steps()}
            {at.questions()}
            <h2>{words.vitals()}</h2>
            {at.vital(Vital::Temperature)}
            {at.vital(Vital::Pulse)}
            {at.vital(Vital::Breaths)}
            <Caution said=words.vitals_are_no_diagnosis() />
            {move || at.sheet()}
            {move || at.number()}
            {move || at.ends(&id.get_value())}
        </Frame>
    }
}

impl AtIt {
    fn name(self) -> String {
        self.view
            .with(|view| view.as_ref().map(|view| view.animal.name.clone()))
            .unwrap_or_default()
    }

    /// The stop where there is one, else the sentence.
    fn head(self, opening: bool) -> AnyView {
        let words = English::default();
        if let Some(stop) = self.stop.get() {
            // The block is kept low: what stands behind it comes below.
            let (sentence, why) = match &stop {
                Stop::Vet(refusal, _) => {
                    let said = words.refusal(refusal);
                    (format!("{}.", said.sentence), said.why)
                }
                Stop::LookAgain => (words.stop_why(&stop), None),
            };
            return view! {
                <StopBlock order=words.stop_order(&stop) rank=Rank::Sentence>
                    <p>{sentence}</p>
                </StopBlock>
                {why.map(|why| view! { <p>{why}</p> })}
            }
            .into_any();
        }
        let said = match (self.view.with(Option::is_none), self.found.get()) {
            (true, _) if opening => words.opening().to_owned(),
            (true, _) => words.not_here().to_owned(),
            (false, WillNotEat::ThisHay) => words.leaves_this_hay(&self.name()),
            (false, _) => words.hold_out_a_handful(&self.name()),
        };
        view! { <Sentence said=said /> }.into_any()
    }

    /// The vet's number, where the vet is to be rung.
    fn ring(self) -> Option<AnyView> {
        let words = English::default();
        self.stop.get()?;
        self.view.with(|view| {
            let vet = &view.as_ref()?.vet;
            let href = vet.telephone.as_deref().and_then(dial);
            let says = words.ring_the_vet(vet);
            Some(match href {
                Some(href) => view! {
                    <Rows name=words.the_vet()><Row name=says press=href /></Rows>
                }
                .into_any(),
                None => view! { <p>{says} "."</p> }.into_any(),
            })
        })
    }

    fn steps(self) -> Option<AnyView> {
        let words = English::default();
        let found = self.found.get();
        if found.steps().is_empty() {
            return None;
        }
        let rows = found
            .steps()
            .iter()
            .map(|step| {
                let said = words.eat_step(*step);
                view! { <Row name=said.sentence second=said.why /> }
            })
            .collect_view();
        Some(
            view! {
                <h2>{words.what_to_do()}</h2>
                <Rows name=words.what_to_do()>{rows}</Rows>
            }
            .into_any(),
        )
    }

    fn questions(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let last = Signal::derive(move || last_of(&form.held(LAST).unwrap_or_default()));
        let on_last = Callback::new(move |last: LastAte| {
            form.set(LAST, text_of_last(last).to_owned());
            form.set(LAST_FROM, clock::now().to_ms().to_string());
        });
        let handful = Signal::derive(move || handful_of(&form.held(HANDFUL).unwrap_or_default()));
        let on_handful = Callback::new(move |handful: Handful| {
            self.wrong.set(Vec::new());
            if let Some((_, text)) = HANDFULS.iter().find(|(offered, _)| *offered == handful) {
                form.set(HANDFUL, (*text).to_owned());
            }
        });
        let dull = Signal::derive(move || answer_of(&form.held(DULL).unwrap_or_default()));
        let on_dull = Callback::new(move |dull: Answer| form.set(DULL, text_of(dull).to_owned()));
        let lasts = LastAte::offered(clock::now(), &DeviceZone)
            .into_iter()
            .map(|last| Offer::new(last, words.last_ate(last)))
            .collect();
        view! {
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
                chosen=dull
                on_choose=on_dull
            />
            <Choice
                legend=words.last_ate_question()
                hint=words.last_ate_hint().to_owned()
                offers=lasts
                chosen=last
                on_choose=on_last
            />
        }
        .into_any()
    }

    fn vital(self, vital: Vital) -> AnyView {
        let words = English::default();
        let field = form_of::field(vital);
        let text = self.form.text(field);
        let hint = Signal::derive(move || {
            self.view.with(|view| {
                let normal = view.as_ref()?.normal(vital);
                Some(words.vital_hint(vital, normal.as_ref()))
            })
        });
        let echo = Signal::derive(move || {
            let reading = form_of::reading(vital, &text.get()).ok().flatten()?;
            self.view.with(|view| {
                let normal = view.as_ref()?.normal(vital)?;
                Some(words.vital_stands(vital, reading, &normal))
            })
        });
        let error = Signal::derive(move || {
            self.wrong.with(|wrong| {
                let of = |wrong: &&Wrong| matches!(wrong, Wrong::Vital(of, _) if *of == vital);
                Some(words.not_eating_wrong(wrong.iter().find(of)?))
            })
        });
        view! { <VitalField vital form=self.form name=field hint echo error /> }.into_any()
    }

    /// Writes it. The sheet stays on the screen where the vet is to be rung.
    fn save(self) {
        if self.busy.get_untracked() {
            return;
        }
        let words = English::default();
        let form = self.form;
        let typed = Typed {
            temperature: form.now(form_of::field(Vital::Temperature)),
            pulse: form.now(form_of::field(Vital::Pulse)),
            breaths: form.now(form_of::field(Vital::Breaths)),
            telephone: form.now(TELEPHONE),
            vet: words.the_vet().to_owned(),
        };
        let record = form.id("id");
        let now = clock::now();
        let made = self.view.with_untracked(|view| {
            let view = view.as_ref()?;
            let offered = form_of::offered(view, |field| form.now(field), now, &DeviceZone);
            let leaves = view.found(&offered, now) == WillNotEat::ThisHay;
            let to = leaves.then(|| Route::Horse(view.animal.id.clone()));
            Some((typed.act(view, &offered, now, &record), to))
        });
        let Some((made, to)) = made else {
            return;
        };
        let act = match made {
            Ok(act) => act,
            Err(faults) => {
                self.wrong.set(faults);
                return;
            }
        };
        self.wrong.set(Vec::new());
        self.failed.set(false);
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            self.busy.try_set(false);
            if done.is_err() {
                self.failed.try_set(true);
            } else if let Some(to) = to {
                self.world.go(&to);
            } else {
                form.empty();
            }
        });
    }
}
