//! A net: its name, its own weight, what it holds and how wide its holes are; and a new one.

use super::work::{Work, yard};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press, Sentence,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::NetId;
use tussock_core::units::parse::{LengthUnit, MassUnit};
use tussock_flow::forms::net::{Field as Which, From, Typed, Wrong};
use tussock_flow::routes::Route;
use tussock_flow::views::net_list::net;
use tussock_flow::views::nets::YardNet;
use tussock_flow::words::{English, HorsesWords, NetWords, ShedWords, UnitWords};

const FROMS: [(From, &str); 2] = [(From::Net, "net"), (From::Loose, "loose")];
const DOUBLES: [(bool, &str); 2] = [(false, "single"), (true, "double")];

/// A new net.
#[component]
pub fn NewNet() -> impl IntoView {
    NetForm::of(Route::NewNet, None).screen()
}

/// A net that is there.
#[component]
pub fn Net(
    /// Which.
    net: NetId,
) -> impl IntoView {
    NetForm::of(Route::Net(net.clone()), Some(net)).screen()
}

#[derive(Clone, Copy)]
struct NetForm {
    world: World,
    work: Work,
    form: Form,
    /// The net that is changed, once it is read; `None` for a new one.
    there: Memo<Option<YardNet>>,
    new: bool,
    typed: Signal<Typed>,
    wrong: RwSignal<Vec<Wrong>>,
    failed: RwSignal<bool>,
    busy: RwSignal<bool>,
}

impl NetForm {
    fn of(route: Route, id: Option<NetId>) -> Self {
        let world = World::here();
        let work = Work::of(world);
        let form = Form::open(world, route.to_string());
        let new = id.is_none();
        let id = StoredValue::new(id);
        let there = Memo::new(move |_| {
            let id = id.get_value()?;
            work.now.with(|now| net(&now.as_ref()?.0, &id))
        });
        // A field that nobody touched shows what is stored.
        let typed = Signal::derive(move || {
            let stored = there.with(|there| there.as_ref().map(|net| Typed::of(&net.body)));
            let held = |field: &str, stored: Option<&String>| {
                form.held(field)
                    .unwrap_or_else(|| stored.cloned().unwrap_or_default())
            };
            let of = stored.as_ref();
            Typed {
                name: held("name", of.map(|of| &of.name)),
                own: held("own", of.map(|of| &of.own)),
                capacity: held("capacity", of.map(|of| &of.capacity)),
                hole: held("hole", of.map(|of| &of.hole)),
                from: chosen(&FROMS, form.held("from"))
                    .unwrap_or_else(|| of.map_or(From::Net, |of| of.from)),
                double: chosen(&DOUBLES, form.held("double"))
                    .unwrap_or_else(|| of.is_some_and(|of| of.double)),
            }
        });
        Self {
            world,
            work,
            form,
            there,
            new,
            typed,
            wrong: RwSignal::new(Vec::new()),
            failed: RwSignal::new(false),
            busy: RwSignal::new(false),
        }
    }

    fn screen(self) -> AnyView {
        let words = English::default();
        let opening = Signal::derive(move || self.work.now.with(Option::is_none));
        let missing =
            Memo::new(move |_| !self.new && !opening.get() && self.there.with(Option::is_none));
        let said = Signal::derive(move || {
            if opening.get() {
                words.opening().to_owned()
            } else if self.new {
                words.new_net().to_owned()
            } else {
                self.there.with(|there| match there {
                    Some(net) => words.this_net(net.body.name.as_str()),
                    None => words.no_such_net().to_owned(),
                })
            }
        });
        let action = move || {
            if missing.get() {
                let list = Route::YardNets.to_string();
                view! { <Action says=words.the_nets() press=list /> }.into_any()
            } else {
                let save = Callback::new(move |()| self.save());
                let busy = Signal::derive(move || self.busy.get() || opening.get());
                view! { <Action says=words.save_net() press=save busy /> }.into_any()
            }
        };
        let foot = move || {
            view! {
                <Saving failed=self.failed />
                <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::YardNets.to_string()) }>
                    {action}
                </ActionRow>
            }
        };
        view! {
            <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
                <Sentence said />
                <Unread shelf=self.work.shelf />
                {draft_line(self.form)}
                <Show when=move || !missing.get()>{move || self.fields()}</Show>
            </Frame>
        }
        .into_any()
    }

    fn fields(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let from = Signal::derive(move || Some(self.typed.with(|typed| typed.from)));
        let choose_from = Callback::new(move |from: From| {
            if let Some((_, key)) = FROMS.iter().find(|(offered, _)| *offered == from) {
                form.set("from", (*key).to_owned());
            }
        });
        let mass = words.mass_unit(MassUnit::Kg).to_owned();
        view! {
            {self.field(Which::Name, "name", |typed| typed.name.clone(), None)}
            {self.field(Which::Own, "own", |typed| typed.own.clone(), Some(mass.clone()))}
            {self.field(Which::Capacity, "capacity", |typed| typed.capacity.clone(), Some(mass))}
            <Choice
                legend=words.eaten_from_asked()
                offers=FROMS.iter().map(|(from, _)| Offer::new(*from, words.eaten_from(*from))).collect()
                chosen=from
                on_choose=choose_from
            />
            <Show when=move || from.get() == Some(From::Net)>{move || self.holes()}</Show>
            <p class="soft" role="status">
                {move || words.eaten_as(self.typed.with(Typed::kind))}
            </p>
        }
        .into_any()
    }

    /// What only a net has.
    fn holes(self) -> AnyView {
        let words = English::default();
        let form = self.form;
        let choose = Callback::new(move |double: bool| {
            if let Some((_, key)) = DOUBLES.iter().find(|(offered, _)| *offered == double) {
                form.set("double", (*key).to_owned());
            }
        });
        let cm = words.length_unit(LengthUnit::Cm).to_owned();
        view! {
            {self.field(Which::Hole, "hole", |typed| typed.hole.clone(), Some(cm))}
            <Choice
                legend=words.double_asked()
                offers=DOUBLES.iter().map(|(double, _)| Offer::new(*double, words.double(*double))).collect()
                chosen=Signal::derive(move || Some(self.typed.with(|typed| typed.double)))
                on_choose=choose
            />
        }
        .into_any()
    }

    fn field(
        self,
        which: Which,
        key: &'static str,
        text: fn(&Typed) -> String,
        unit: Option<String>,
    ) -> AnyView {
        let words = English::default();
        let error = Signal::derive(move || {
            let wrong = self.wrong.get();
            let own = wrong.iter().find(|wrong| wrong.field() == Some(which));
            // What no field is to blame for stands under the name.
            let other = wrong
                .iter()
                .find(|wrong| wrong.field().is_none() && which == Which::Name);
            own.or(other).map(|wrong| words.net_wrong(wrong))
        });
        let keyboard = if which == Which::Name {
            Keyboard::Text
        } else {
            Keyboard::Decimal
        };
        view! {
            <Field
                label=words.net_field(which)
                hint=words.net_field_hint(which)
                value=Signal::derive(move || self.typed.with(text))
                on_input=self.form.typed(key)
                error=error
                unit=unit
                keyboard=keyboard
            />
        }
        .into_any()
    }

    fn save(self) {
        if self.busy.get_untracked() {
            return;
        }
        let there = self.there.get_untracked();
        let act =
            self.typed
                .get_untracked()
                .act(&yard(self.world), there.as_ref(), &self.form.id("id"));
        match act {
            Ok(act) => {
                self.wrong.set(Vec::new());
                self.failed.set(false);
                self.busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = self.form.save(act).await;
                    self.busy.try_set(false);
                    if done.is_ok() {
                        self.world.go(&Route::YardNets);
                    } else {
                        self.failed.try_set(true);
                    }
                });
            }
            Err(wrong) => self.wrong.set(wrong),
        }
    }
}

fn chosen<T: Copy>(offers: &[(T, &str)], held: Option<String>) -> Option<T> {
    let held = held?;
    offers
        .iter()
        .find(|(_, key)| *key == held)
        .map(|(offered, _)| *offered)
}
