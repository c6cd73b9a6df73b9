//! The mend of a ration: asked for, shown as a change slip, and used.

use super::mend_shown::{decides, nothing_fits, options, slip_view};
use super::ration::{held, told};
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Field, Frame, FrameKind, Keyboard, Press, Quiet, QuietRow, Row, Rows,
    Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{AnimalId, FoodId};
use tussock_core::log::Subject;
use tussock_core::sources::RecordId;
use tussock_flow::routes::Route;
use tussock_flow::views::mend::asks::SET;
use tussock_flow::views::mend::{
    Asks, Candidate, Found, Made, MendView, Outcome, Proposal, SetWrong, keys as keys_of, mend_of,
    needs, use_it,
};
use tussock_flow::words::{
    BalanceWords, BesideWords, English, HorsesWords, MendReasonWords, MendWords, PlanWords,
    RationWords,
};

/// The field of which proposal is looked at.
const SHOWN: &str = "shown";

/// Everything the parts of this screen share.
#[derive(Clone, Copy)]
pub(super) struct AtMend {
    world: World,
    pub(super) form: Form,
    pub(super) seen: Memo<Option<Outcome>>,
    /// Whether an amount that is set by hand cannot be read.
    wrong: Memo<bool>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
    id: StoredValue<AnimalId>,
}

/// The mend of a ration.
#[component]
pub fn Mend(
    /// Whose.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Mend(animal.clone()).to_string());
    let id = StoredValue::new(animal.clone());
    let shelf = world.shelf(move || id.with_value(needs));
    let minute = world.minute();
    // The keys that an amount may be set for, whatever is asked.
    let keys = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => id.with_value(|id| keys_of(&shelf, id, minute.get(), &DeviceZone)),
        _ => Vec::new(),
    });
    let read = Memo::new(move |_| Asks::read(|name| form.held(name), keys.get().into_iter()));
    let seen = Memo::new(move |_| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => {
            let asks = read.with(|(asks, _)| asks.clone());
            id.with_value(|id| mend_of(&shelf, id, &asks, now, &DeviceZone))
        }
        _ => None,
    });
    let here = AtMend {
        world,
        form,
        seen,
        wrong: Memo::new(move |_| read.with(|(_, wrong)| !wrong.is_empty())),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
        id,
    };
    let said = Signal::derive(move || {
        seen.with(|seen| match seen {
            None if shelf.get().is_none() => words.opening().to_owned(),
            None => words.not_here().to_owned(),
            Some(Outcome::Shown(view)) => words.mend_sentence(view, here.shown()),
            Some(Outcome::Refused) => words.no_mend_while_refused().sentence,
            Some(Outcome::Nothing(error)) => words.plan_error(error).sentence,
        })
    });
    let back = Route::Ration(animal.clone()).to_string();
    let foot = move || {
        let back = Back {
            name: words.back().into(),
            press: Press::from(back.clone()),
        };
        view! {
            <QuietRow>
                <Quiet says=words.to_the_foods() press=Route::Foods.to_string() />
            </QuietRow>
            <Saving failed=here.failed />
            <ActionRow back=back>{move || here.action()}</ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || here.name())
            when=words.mend_word()
            foot=foot
        >
            <Sentence said=said />
            {draft_line(form)}
            <Unread shelf />
            {move || here.body()}
            {move || here.asks()}
            {here.by_hand(read)}
            {move || here.stands()}
        </Frame>
    }
}

impl AtMend {
    /// Which of the proposals is looked at.
    fn shown(self) -> usize {
        let held = self.form.held(SHOWN);
        held.and_then(|text| text.parse().ok()).unwrap_or(0)
    }

    fn name(self) -> String {
        self.seen.with(|seen| match seen {
            Some(Outcome::Shown(view)) => view.animal.name.clone(),
            _ => String::new(),
        })
    }

    /// Chooses, and looks at the first proposal again.
    pub(super) fn choose(self, field: &str, word: &str) {
        self.form.set(SHOWN, String::new());
        self.form.set(field, word.to_owned());
    }

    fn action(self) -> AnyView {
        let words = English::default();
        let leads = self.seen.with(|seen| match seen {
            Some(Outcome::Shown(view)) if view.proposal(0).is_some() => None,
            Some(Outcome::Shown(_)) => Some((words.to_the_foods(), Route::Foods)),
            Some(_) => Some((words.see_plan(), Route::Plan(self.id.get_value()))),
            None => Some((words.back(), Route::Ration(self.id.get_value()))),
        });
        if let Some((says, to)) = leads {
            return view! { <Action says=says press=to.to_string() /> }.into_any();
        }
        let using = Callback::new(move |()| self.use_shown());
        view! { <Action says=words.use_this_ration() press=using busy=self.busy /> }.into_any()
    }

    fn use_shown(self) {
        let words = English::default();
        // What cannot be read is not dropped in silence.
        if self.wrong.get_untracked() {
            self.failed.set(true);
            return;
        }
        let form = self.form;
        let yard = Subject::yard(&self.world.yard());
        let act = self.seen.with_untracked(|seen| {
            let Some(Outcome::Shown(view)) = seen else {
                return None;
            };
            let shown = untrack(move || self.shown());
            let proposal = view.proposal(shown)?;
            let made = Made {
                ration: RecordId(form.id("ration-id")),
                food: &|typical| FoodId(form.id(&format!("food-id-{}", typical.key()))),
                yard: &yard,
                name: &|typical| words.typical_food(typical).to_owned(),
                by_hand: self.set_by_hand(view),
            };
            Some(use_it(view, proposal, &made))
        });
        let Some(Ok(act)) = act else {
            self.failed.set(true);
            return;
        };
        self.busy.set(true);
        leptos::task::spawn_local(async move {
            let done = form.save(act).await;
            self.busy.try_set(false);
            if done.is_ok() {
                self.world.go(&Route::Plan(self.id.get_value()));
            } else {
                self.failed.try_set(true);
            }
        });
    }

    fn set_by_hand(self, view: &MendView) -> bool {
        let typed = |key: String| self.form.now(&format!("{SET}{key}"));
        let mut keys = view.candidates.iter().map(Candidate::key);
        keys.any(|key| !typed(key).trim().is_empty())
    }

    fn body(self) -> AnyView {
        let words = English::default();
        let shown = self.shown();
        self.seen.with(|seen| match seen {
            Some(Outcome::Shown(view)) => match &view.found {
                Found::Rations { proposals, .. } => {
                    let proposal = proposals.get(shown).or_else(|| proposals.first());
                    proposal
                        .map(|proposal| self.proposed(view, proposal))
                        .into_any()
                }
                Found::Nothing(closest) => nothing_fits(view, closest),
                Found::NotKnown => view! { <p>{words.mend_not_known()}</p> }.into_any(),
                Found::Failed(error) => view! { <p>{words.solve_error(error)} "."</p> }.into_any(),
            },
            Some(Outcome::Refused) => {
                let why = words.no_mend_while_refused().why;
                view! { <p>{why}</p> }.into_any()
            }
            Some(Outcome::Nothing(error)) => {
                let why = words.plan_error(error).why;
                view! { <p>{why}</p> }.into_any()
            }
            None => ().into_any(),
        })
    }

    fn proposed(self, view: &MendView, proposal: &Proposal) -> AnyView {
        let words = English::default();
        let cautions = words
            .beside_the_mend(view, proposal)
            .into_iter()
            .map(told)
            .collect_view();
        view! {
            {slip_view(&proposal.slip)}
            {cautions}
            <p class="soft">{words.using_it()}</p>
            <h2>{words.why_so()}</h2>
            {decides(view, proposal)}
            {self.sets(view)}
        }
        .into_any()
    }

    /// How the proposal stands, and what is no need.
    fn stands(self) -> Option<AnyView> {
        let words = English::default();
        let shown = self.shown();
        self.seen.with(|seen| {
            let Some(Outcome::Shown(view)) = seen else {
                return None;
            };
            let proposal = view.proposal(shown)?;
            Some(
                view! {
                    <p><strong>{words.balance_sentence(&proposal.balance)} "."</strong></p>
                    {held(&proposal.balance)}
                    {told(words.balance_is_no_diagnosis())}
                    {options()}
                }
                .into_any(),
            )
        })
    }

    /// The sets of foods, each to be looked at.
    fn sets(self, view: &MendView) -> Option<AnyView> {
        let words = English::default();
        let Found::Rations { proposals, .. } = &view.found else {
            return None;
        };
        let shown = Some(self.shown())
            .filter(|at| *at < proposals.len())
            .unwrap_or(0);
        let rows: Vec<AnyView> = proposals
            .iter()
            .enumerate()
            .filter(|(at, _)| *at != shown)
            .map(|(at, proposal)| {
                let [foods, cost] = words.set_of_foods(view, proposal);
                let look = Callback::new(move |()| self.form.set(SHOWN, at.to_string()));
                view! { <Row name=foods second=cost press=Press::from(look) /> }.into_any()
            })
            .collect();
        (!rows.is_empty()).then(|| {
            view! {
                <h2>{words.other_sets()}</h2>
                <Rows name=words.other_sets()>{rows}</Rows>
            }
            .into_any()
        })
    }

    /// The amounts that are set by hand. Drawn anew only when other foods may be given, so that a field that is typed in
    /// stays.
    fn by_hand(self, read: Memo<(Asks, Vec<(String, SetWrong)>)>) -> AnyView {
        let words = English::default();
        let form = self.form;
        let fields = Memo::new(move |_| {
            self.seen.with(|seen| match seen {
                Some(Outcome::Shown(view)) => view
                    .candidates
                    .iter()
                    .map(|candidate| {
                        let why = candidate.not_offered.map(|why| words.not_offered(why));
                        (candidate.key(), words.set_label(candidate), why)
                    })
                    .collect(),
                _ => Vec::new(),
            })
        });
        let drawn = move || {
            fields
                .get()
                .into_iter()
                .map(|(key, label, why)| {
                    let name = format!("{SET}{key}");
                    let (typed, set) = (name.clone(), name);
                    let value = Signal::derive(move || form.held(&typed).unwrap_or_default());
                    let error = Signal::derive(move || {
                        read.with(|(_, wrong)| {
                            let found = wrong.iter().find(|(one, _)| *one == key);
                            found.map(|(_, wrong)| words.set_wrong(wrong))
                        })
                    });
                    let on_input = Callback::new(move |text: String| {
                        form.set(SHOWN, String::new());
                        form.set(&set, text);
                    });
                    view! {
                        <Field
                            label=label
                            hint=why.map(str::to_owned)
                            value=value
                            on_input=on_input
                            error=error
                            unit="g"
                            keyboard=Keyboard::Decimal
                        />
                    }
                })
                .collect_view()
        };
        view! {
            <details class="numbers">
                <summary>{words.set_by_hand()}</summary>
                <p class="hint">{words.set_hint()}</p>
                {drawn}
            </details>
        }
        .into_any()
    }
}
