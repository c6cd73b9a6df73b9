//! What hangs in front of an animal or group: what was left, eaten up, and the next net.

use super::work::Work;
use crate::device::clock::DeviceZone;
use crate::form::Form;
use crate::parts::{
    ActKey, Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer,
    Press, Quiet, QuietRow, Sentence, WideKey,
};
use crate::places::{Saving, Unread};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::Quarters;
use tussock_core::units::LocalDate;
use tussock_core::units::parse::MassUnit;
use tussock_flow::forms::hanging::Wrong;
use tussock_flow::routes::Route;
use tussock_flow::views::hanging::{Hanging as View, HungNet, hanging};
use tussock_flow::views::round::waits_for_water;
use tussock_flow::words::{
    English, HangingWords, HorsesWords, NotEatingWords, ShedWords, TubWords, UnitWords,
};

/// What the parts of this screen share.
#[derive(Clone, Copy)]
pub(super) struct AtNets {
    pub world: World,
    pub work: Work,
    pub form: Form,
    pub id: StoredValue<AnimalId>,
    pub view: Memo<Option<View>>,
    /// The net that is asked about.
    pub net: Memo<Option<HungNet>>,
    /// It is weighed back rather than judged by eye.
    pub weighing: RwSignal<bool>,
    /// The net that was said last was hardly touched.
    pub hardly: RwSignal<bool>,
    pub wrong: RwSignal<Option<Wrong>>,
    pub refused: RwSignal<bool>,
    pub failed: RwSignal<bool>,
    pub busy: RwSignal<bool>,
}

/// What hangs in front of an animal or group.
#[component]
pub fn Hanging(
    /// In front of whom.
    animal: AnimalId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let work = Work::of(world);
    let form = Form::open(world, Route::Hanging(animal.clone()).to_string());
    let id = StoredValue::new(animal);
    let view = Memo::new(move |_| {
        work.now.with(|now| {
            let (shelf, today) = now.as_ref()?;
            id.with_value(|id| hanging(shelf, today, id.as_str(), &DeviceZone))
        })
    });
    let which = form.text("which");
    let at = AtNets {
        world,
        work,
        form,
        id,
        view,
        net: Memo::new(move |_| {
            let which = which.get();
            view.with(|view| view.as_ref()?.net(&which).cloned())
        }),
        weighing: RwSignal::new(false),
        hardly: RwSignal::new(false),
        wrong: RwSignal::new(None),
        refused: RwSignal::new(false),
        failed: RwSignal::new(false),
        busy: RwSignal::new(false),
    };
    let said = Signal::derive(move || {
        if work.now.with(Option::is_none) {
            return words.opening().to_owned();
        }
        match at.net.get() {
            Some(net) => words.how_much_left(&net, at.today(), &DeviceZone),
            None => words.nothing_hangs(&at.name()),
        }
    });
    let foot = move || {
        view! {
            <Show when=move || at.net.with(Option::is_some)>{move || at.quiet()}</Show>
            <Show when=move || at.refused.get()>
                <p class="error" role="alert">{words.not_saved()}</p>
            </Show>
            <Saving failed=at.failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Shed.to_string()) }>
                {move || at.action()}
            </ActionRow>
        }
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || at.name())
            when=Signal::derive(move || Some(words.time_at(world.now.get(), &DeviceZone)))
            foot=foot
        >
            <Sentence said />
            <Unread shelf=work.shelf />
            {move || at.caution()}
            {move || at.several()}
            <Show when=move || at.net.with(Option::is_some)>
                {move || if at.weighing.get() { at.weigh_back() } else { at.by_eye() }}
            </Show>
            {move || at.eats()}
        </Frame>
    }
}

impl AtNets {
    fn name(self) -> String {
        self.view
            .with(|view| view.as_ref().map(|view| view.name.clone()))
            .unwrap_or_default()
    }

    pub(super) fn today(self) -> LocalDate {
        self.work
            .now
            .with(|now| now.as_ref().map(|(_, today)| today.day))
            .unwrap_or_default()
    }

    /// What to do about a net that was hardly touched, where it was just said.
    fn caution(self) -> Option<AnyView> {
        let words = English::default();
        self.hardly.get().then(|| {
            let [said, why] = words.hardly_touched(&self.name());
            let to = self.view.with(|view| {
                let view = view.as_ref()?;
                let of_one = view.animal().map(Route::NotEating);
                of_one.or_else(|| view.group().map(Route::WhoWillNotEat))
            });
            let one = to.map(|to| {
                view! { <QuietRow><Quiet says=words.will_not_eat() press=to.to_string() /></QuietRow> }
            });
            view! {
                <Caution said=said why=words.why_asked()>{why}</Caution>
                {one}
            }
            .into_any()
        })
    }

    /// Which net, when more than one hangs.
    fn several(self) -> Option<AnyView> {
        let words = English::default();
        let nets = self.view.with(|view| Some(view.as_ref()?.nets.clone()))?;
        if nets.len() < 2 {
            return None;
        }
        let today = self.today();
        let offers = nets
            .into_iter()
            .map(|net| {
                let hay = net.hay.map(|hay| words.feed(hay)).unwrap_or_default();
                Offer::new(net.id.0.clone(), words.hung_net(&net, today, &DeviceZone)).with(hay)
            })
            .collect();
        let chosen = Signal::derive(move || self.net.with(|net| Some(net.as_ref()?.id.0.clone())));
        let choose = Callback::new(move |id: String| self.form.set("which", id));
        Some(
            view! {
                <Choice legend=words.which_net() offers=offers chosen=chosen on_choose=choose />
            }
            .into_any(),
        )
    }

    /// The keys: a tap each.
    fn by_eye(self) -> AnyView {
        let words = English::default();
        let keys = Quarters::ALL
            .map(|quarters| {
                let act = Callback::new(move |()| self.say(quarters));
                view! { <ActKey says=words.quarters(quarters) act /> }
            })
            .into_iter()
            .collect_view();
        let timed = move || {
            self.can_time().then(|| {
                let seen = Callback::new(move |()| self.empty(false));
                let found = Callback::new(move |()| self.empty(true));
                view! {
                    <WideKey says=words.eaten_up_now() means=words.eaten_up_means() act=seen />
                    <WideKey says=words.found_empty() means=words.found_empty_means() act=found />
                }
            })
        };
        view! {
            <div class="pad-keys" role="group" aria-label=words.left_by_eye()>{keys}</div>
            {timed}
            <p class="error" role="alert">{move || self.wrong_said()}</p>
        }
        .into_any()
    }

    fn can_time(self) -> bool {
        self.net
            .with(|net| net.as_ref().is_some_and(HungNet::can_be_timed))
            && self
                .view
                .with(|view| view.as_ref().is_some_and(|view| view.eats.is_some()))
    }

    fn wrong_said(self) -> Option<String> {
        let words = English::default();
        self.wrong
            .with(|wrong| wrong.as_ref().map(|wrong| words.left_wrong(wrong)))
    }

    /// The fields of weighing back.
    fn weigh_back(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let soaked = self
            .net
            .with(|net| net.as_ref().is_some_and(|net| net.soaked));
        let unit = words.mass_unit(MassUnit::Kg).to_owned();
        let error = |of_hung: bool| {
            Signal::derive(move || {
                let hung = self
                    .wrong
                    .with(|wrong| matches!(wrong, Some(Wrong::Hung(_))));
                (hung == of_hung).then(|| self.wrong_said()).flatten()
            })
        };
        let wet = soaked.then(|| {
            view! {
                <Field
                    label=words.wet_weighed()
                    hint=words.wet_hint()
                    value=form.text("wet")
                    on_input=form.typed("wet")
                    error=error(true)
                    unit=unit.clone()
                    keyboard=Keyboard::Decimal
                />
            }
        });
        view! {
            <Field
                label=words.rest_weighs()
                hint=words.rest_hint(soaked)
                value=form.text("rest")
                on_input=form.typed("rest")
                error=error(false)
                unit=unit.clone()
                keyboard=Keyboard::Decimal
            />
            {wet}
        }
        .into_any()
    }

    fn quiet(self) -> AnyView {
        let words = English::default();
        let says = Signal::derive(move || {
            let says = if self.weighing.get() {
                words.by_eye_again()
            } else {
                words.weigh_back()
            };
            says.to_owned()
        });
        let turn = Callback::new(move |()| {
            self.wrong.set(None);
            self.weighing.update(|weighing| *weighing = !*weighing);
        });
        // Of a group somebody has to say which one: the way there stands beside its nets at all times.
        let who = self
            .view
            .with(|view| view.as_ref()?.group())
            .filter(|_| !self.hardly.get())
            .map(|group| {
                let to = Route::WhoWillNotEat(group).to_string();
                view! { <Quiet says=words.will_not_eat() press=to /> }
            });
        view! { <QuietRow><Quiet says press=turn />{who}</QuietRow> }.into_any()
    }

    fn action(self) -> AnyView {
        let words = English::default();
        if self.weighing.get() && self.net.with(Option::is_some) {
            let save = Callback::new(move |()| self.save());
            return view! { <Action says=words.save_left() press=save busy=self.busy /> }
                .into_any();
        }
        let due = self.view.with(|view| view.as_ref()?.due.clone());
        if due.as_ref().is_some_and(waits_for_water) {
            let press = Press::from(Route::Soaks.to_string());
            return view! { <Action says=words.soak_first() press /> }.into_any();
        }
        if let Some(job) = due {
            let hang = Callback::new(move |()| self.hang());
            return view! { <Action says=words.hung_now(&job) press=hang busy=self.busy /> }
                .into_any();
        }
        let nets = Route::Nets(self.id.get_value()).to_string();
        view! { <Action says=words.weigh_nets() press=nets /> }.into_any()
    }
}
