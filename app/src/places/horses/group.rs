//! Animals fed together.

use crate::device::clock::{self, DeviceZone};
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Field, Frame, FrameKind, Offer, Press, Quiet, QuietRow, Row,
    Rows, Sentence, Several,
};
use crate::places::{Saving, Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::{Animal, AnimalId, GroupId};
use tussock_core::units::Zone;
use tussock_flow::forms::group::{Wrong, act, change, chosen, with};
use tussock_flow::routes::Route;
use tussock_flow::views::beside;
use tussock_flow::views::group::{Fed, Herd, herd};
use tussock_flow::words::{
    ConditionWords, English, GroupWords, HorsesWords, LedgerWords, PlanWords, SafetyWords, Said,
    UnitWords,
};

/// The field of the members.
const MEMBERS: &str = "members";

/// Which animals are in it: keys that stand on or off.
fn members(
    words: English,
    form: Form,
    yard: &[Animal],
    held: String,
    hint: Signal<Option<String>>,
) -> impl IntoView + use<> {
    let offers: Vec<Offer<AnimalId>> = yard
        .iter()
        .map(|animal| Offer::new(animal.id.clone(), animal.name.clone()))
        .collect();
    let held = StoredValue::new(held);
    let text = move || form.held(MEMBERS).unwrap_or_else(|| held.get_value());
    let on_choose = Callback::new(move |(animal, within): (AnimalId, bool)| {
        form.set(MEMBERS, with(&untrack(text), &animal, within));
    });
    view! {
        <Several
            legend=words.members_from_today()
            offers=offers
            chosen=Signal::derive(move || chosen(&text()))
            on_choose=on_choose
            hint=hint
        />
    }
}

/// A new group: its name and who is in it from today.
#[component]
pub fn NewGroup() -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::NewGroup.to_string());
    let shelf = world.shelf(beside::list_needs);
    let yard = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => shelf.animals(),
        _ => Vec::new(),
    });
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let id = GroupId(form.id("id"));
        let today = DeviceZone.to_local(clock::now()).date;
        match act(&id, &form.now("name"), &chosen(&form.now(MEMBERS)), today) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_ok() {
                        world.go(&Route::Group(id));
                    } else {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let no_name = Signal::derive(move || {
        matches!(wrong.get(), Some(Wrong::Name(_))).then(|| words.group_name_wanted().to_owned())
    });
    let hint = Signal::derive(move || Some(members_hint(words, wrong.get().as_ref())));
    let foot = move || {
        view! {
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.save_group() press=save busy=busy />
            </ActionRow>
        }
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.horses() foot=foot>
            <Sentence said=words.who_eats_together() />
            <Unread shelf />
            {draft_line(form)}
            <Field label=words.name() value=form.text("name") on_input=form.typed("name") error=no_name />
            {move || members(words, form, &yard.get(), String::new(), hint)}
        </Frame>
    }
}

fn members_hint(words: English, wrong: Option<&Wrong>) -> String {
    match wrong {
        Some(Wrong::NoMember) => words.member_wanted(),
        _ => words.members_hint(),
    }
    .to_owned()
}

/// A group: what is offered to all, each one's share, who needs separating; and who is in it.
#[component]
pub fn Group(
    /// Which.
    group: GroupId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::Group(group.clone()).to_string());
    let id = StoredValue::new(group);
    let shelf = world.shelf(beside::group_needs);
    let minute = world.minute();
    let work_out = move |_: Option<&Option<Herd>>| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => herd(&shelf, &id.get_value(), now, &DeviceZone),
        _ => None,
    };
    // Drawn again only when it reads differently: a minute that changes nothing leaves the keys alone.
    let all = Memo::new_with_compare(work_out, |old, new| match (old, new) {
        (Some(Some(old)), Some(Some(new))) => !old.reads_as(new),
        (old, new) => old != new,
    });
    let wrong = RwSignal::new(None::<Wrong>);
    let failed = RwSignal::new(false);
    let busy = RwSignal::new(false);
    let save = Callback::new(move |()| {
        let Some(herd) = all.get_untracked() else {
            return;
        };
        let text = untrack(|| form.held(MEMBERS)).unwrap_or_else(|| held_members(&herd));
        match change(&herd.group, &chosen(&text), herd.today) {
            Err(fault) => wrong.set(Some(fault)),
            Ok(act) => {
                wrong.set(None);
                busy.set(true);
                leptos::task::spawn_local(async move {
                    let done = form.save(act).await;
                    busy.try_set(false);
                    if done.is_err() {
                        failed.try_set(true);
                    }
                });
            }
        }
    });
    let said = Signal::derive(move || match all.get().map(|herd| herd.fed) {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.no_such_group().to_owned(),
        Some(Fed::Together(draft, _)) => words.offered_to_all(&draft),
        Some(Fed::Refused(_)) => words.not_together().to_owned(),
        Some(Fed::NoDraft(..)) => words.no_group_ration().to_owned(),
    });
    let hint = Signal::derive(move || Some(members_hint(words, wrong.get().as_ref())));
    let foot = move || {
        view! {
            <QuietRow><Quiet says=words.what_was_eaten() press=Route::GroupLedger(id.get_value()).to_string() /></QuietRow>
            <Saving failed=failed />
            <ActionRow back=Back { name: words.back().into(), press: Press::from(Route::Horses.to_string()) }>
                <Action says=words.save_members() press=save busy=Signal::derive(move || busy.get() || all.with(Option::is_none)) />
            </ActionRow>
        }
    };
    let body = move || {
        all.get().map(|herd| {
            let chooser = members(words, form, &herd.yard, held_members(&herd), hint);
            view! { {ration(words, &herd)}{chooser} }
        })
    };
    view! {
        <Frame
            kind=FrameKind::Flow
            what=Signal::derive(move || all.get().map(|herd| herd.group.name).unwrap_or_default())
            foot=foot
        >
            <Sentence said=said />
            <Unread shelf />
            {draft_line(form)}
            {body}
        </Frame>
    }
}

/// Who is in it today, as the form keeps it.
fn held_members(herd: &Herd) -> String {
    herd.group
        .on(herd.today)
        .into_iter()
        .fold(String::new(), |text, animal| with(&text, animal, true))
}

/// A sentence of care with its reason.
fn care(words: English, said: Said) -> AnyView {
    match said.why {
        Some(why) => {
            view! { <Caution said=said.sentence why=words.why()><p>{why}</p></Caution> }.into_any()
        }
        None => view! { <Caution said=said.sentence /> }.into_any(),
    }
}

/// How it is fed: the ration, or why there is none.
fn ration(words: English, herd: &Herd) -> AnyView {
    match &herd.fed {
        Fed::NoDraft(error, whose) => {
            let Said { sentence, why } = words.plan_error(error);
            let sentence = match whose {
                Some(animal) => format!("{}: {sentence}", herd.name(animal)),
                None => sentence,
            };
            care(words, Said { sentence, why })
        }
        Fed::Refused(refused) => refused
            .iter()
            .flat_map(|refused| refused.why.iter().map(|why| (&refused.draft.animal, why)))
            .map(|(animal, why)| {
                let Said { sentence, why } = words.refusal(why);
                let sentence = format!("{}: {sentence}", animal.name);
                care(words, Said { sentence, why })
            })
            .collect_view()
            .into_any(),
        Fed::Together(draft, offered) => {
            let apart = if draft.separate.is_empty() {
                view! { <p>{words.nobody_apart()}</p> }.into_any()
            } else {
                draft
                    .separate
                    .iter()
                    .map(|why| care(words, words.separate(why, &|animal| herd.name(animal))))
                    .collect_view()
                    .into_any()
            };
            let hays = offered
                .iter()
                .map(|hay| {
                    view! {
                        <Row
                            name=hay.lot.clone()
                            value=words.feed(hay.weigh_out)
                            strong=true
                            second=words.soaked_or_dry(hay.soaked)
                        />
                    }
                })
                .collect_view();
            let day = draft
                .day()
                .into_iter()
                .map(|at| {
                    view! { <Row name=words.time(at.visit) value=words.nets_apart(&at.nets) /> }
                })
                .collect_view();
            let shares = draft
                .members
                .iter()
                .map(|share| {
                    view! {
                        <Row
                            name=share.alone.animal.name.clone()
                            value=words.share_level(share)
                            second=words.member_share(share)
                        />
                    }
                })
                .collect_view();
            view! {
                {apart}
                <h2>{words.weigh_out_for_all()}</h2>
                <Rows name=words.weigh_out_for_all()>{hays}</Rows>
                <h2>{words.group_day()}</h2>
                <Rows name=words.group_day()>{day}</Rows>
                <p>{words.feeding_places(draft.places)}</p>
                <p>{words.strictest(&herd.name(&draft.strictest), draft.risk)}</p>
                <h2>{words.shares()}</h2>
                <Rows name=words.shares()>{shares}</Rows>
            }
            .into_any()
        }
    }
}
