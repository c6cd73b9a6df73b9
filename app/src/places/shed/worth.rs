//! Does a laboratory test pay? Nothing is saved but the draft: the answer follows what is typed.

use super::work::Work;
use crate::form::Form;
use crate::parts::{
    Action, ActionRow, Back, Caution, Choice, Field, Frame, FrameKind, Keyboard, Offer, Press, Row,
    Rows, Sentence,
};
use crate::places::{Unread, draft_line};
use crate::world::World;
use leptos::prelude::*;
use tussock_core::animal::LotId;
use tussock_core::forage::{Otherwise, Verdict, Way, Worth};
use tussock_core::units::Currency;
use tussock_flow::forms::worth::{About, Asked, CURRENCIES, Typed, about};
use tussock_flow::routes::Route;
use tussock_flow::words::{
    English, ForageWords, HayWords, HorsesWords, ShedWords, TubWords, UnitWords, WorthWords,
};

/// Whether a test of a lot pays.
#[component]
pub fn WorthOfTest(
    /// Which.
    lot: LotId,
) -> impl IntoView {
    let world = World::here();
    let words = English::default();
    let form = Form::open(world, Route::WorthOfTest(lot.clone()).to_string());
    let hay = Route::Hay(lot.clone());
    let id = StoredValue::new(lot);
    let shelf = Work::with_stock(world).shelf;
    let known = Memo::new(move |_| match shelf.get() {
        Some(Ok(shelf)) => about(&shelf, &id.get_value()),
        _ => None,
    });
    let currency_text = form.text("currency");
    let instead_text = form.text("instead");
    let currency = Signal::derive(move || {
        Currency::from_code(&currency_text.get())
            .ok()
            .or_else(|| known.with(|known| known.as_ref()?.as_ref().ok().and_then(About::currency)))
    });
    let instead = Signal::derive(move || {
        if instead_text.with(|text| text == "left") {
            Otherwise::LeftOver
        } else {
            Otherwise::Saved
        }
    });
    let texts = Asked::ALL.map(|asked| form.text(asked.key()));
    let answered = Memo::new(move |_| {
        let typed = Typed {
            texts: texts.map(|text| text.get()),
            currency: currency.get(),
            instead: instead.get(),
        };
        known.with(|known| Some(typed.answer(known.as_ref()?.as_ref().ok()?)))
    });
    let worth = Memo::new(move |_| answered.with(|answered| answered.clone()?.worth?.ok()));
    let refused = move || {
        answered.with(|answered| {
            let error = answered.clone()?.worth?.err()?;
            Some(view! { <Caution said=words.forage_error(&error) /> })
        })
    };
    let said = move || match known.get() {
        None if shelf.get().is_none() => words.opening().to_owned(),
        None => words.no_such_hay().to_owned(),
        Some(Err(why)) => words.test_not_asked(why).to_owned(),
        Some(Ok(about)) => worth.with(|worth| match worth {
            Some(worth) => words.worth(worth),
            None => words.does_a_test_pay_of(&about.name),
        }),
    };
    let back = hay.to_string();
    let foot = move || {
        let hay = hay.clone();
        let go = Callback::new(move |()| world.go(&hay));
        view! {
            <ActionRow back=Back { name: words.back().into(), press: Press::from(back.clone()) }>
                <Action says=words.back_to_the_hay() press=go />
            </ActionRow>
        }
    };
    let asks = Memo::new(move |_| known.with(|known| matches!(known, Some(Ok(_)))));
    let fields = move || {
        Asked::ALL
            .into_iter()
            .zip(texts)
            .map(|(asked, text)| {
                let error = Signal::derive(move || {
                    answered.with(|answered| {
                        let wrong = &answered.as_ref()?.wrong;
                        let (_, error) = wrong.iter().find(|(field, _)| *field == asked)?;
                        Some(words.parse_error(error))
                    })
                });
                view! {
                    <Field
                        label=words.worth_label(asked)
                        hint=words.worth_hint(asked)
                        value=text
                        on_input=form.typed(asked.key())
                        error=error
                        keyboard=Keyboard::Decimal
                    />
                }
            })
            .collect_view()
    };
    let choose_currency = Callback::new(move |code: String| form.set("currency", code));
    let choose_instead = Callback::new(move |instead: Otherwise| {
        let text = match instead {
            Otherwise::Saved => "saved",
            Otherwise::LeftOver => "left",
        };
        form.set("instead", text.to_owned());
    });
    let currencies = move || {
        let own = known.with(|known| known.as_ref()?.as_ref().ok().and_then(About::currency));
        let own = own
            .map(|own| own.code())
            .filter(|own| !CURRENCIES.contains(&own.as_str()));
        own.into_iter()
            .chain(CURRENCIES.map(str::to_owned))
            .map(|code| Offer::new(code.clone(), code))
            .collect::<Vec<_>>()
    };
    view! {
        <Frame kind=FrameKind::Flow what=words.shed() foot=foot>
            <Sentence said=Signal::derive(said) />
            <Unread shelf />
            {move || worth.get().map(|worth| answer(&worth))}
            {refused}
            <Show when=move || asks.get()>
                {draft_line(form)}
                {move || view! {
                    <Choice
                        legend=words.worth_currency()
                        offers=currencies()
                        chosen=Signal::derive(move || currency.get().map(|currency| currency.code()))
                        on_choose=choose_currency
                    />
                }}
                {fields()}
                <Choice
                    legend=words.worth_instead()
                    offers=[Otherwise::Saved, Otherwise::LeftOver]
                        .map(|instead| Offer::new(instead, words.worth_instead_is(instead)))
                        .to_vec()
                    chosen=Signal::derive(move || Some(instead.get()))
                    on_choose=choose_instead
                />
            </Show>
        </Frame>
    }
}

/// The three ways, what should be known beside them, and why.
fn answer(worth: &Worth) -> AnyView {
    let words = English::default();
    let ways = [
        (Way::Test, Some(worth.testing)),
        (Way::Soak, Some(worth.soaking)),
        (Way::BuyTested, worth.buying),
    ]
    .into_iter()
    .map(|(way, cost)| {
        let name = words.worth_way(way);
        match cost {
            Some(cost) => view! {
                <Row
                    name=name
                    value=words.worth_cost(&cost, worth)
                    strong=way == worth.cheapest
                    second=words.worth_hours(&cost)
                />
            }
            .into_any(),
            None => view! { <Row name=name value=words.worth_not_known() /> }.into_any(),
        }
    })
    .collect_view();
    let verdicts = [
        Verdict::Within {
            chance: worth.outlook.within,
        },
        Verdict::NotProven {
            chance: Some(worth.outlook.not_proven),
        },
        Verdict::Over {
            chance: worth.outlook.over,
        },
    ];
    let branches = verdicts
        .into_iter()
        .zip(&worth.branches)
        .map(|(verdict, branch)| view! { <p>{words.worth_branch(verdict, branch, worth)} "."</p> })
        .collect_view();
    let cautions = worth
        .notes
        .iter()
        .map(|note| view! { <Caution said=words.worth_note(*note) /> })
        .collect_view();
    view! {
        <Rows name=words.worth_ways()>{ways}</Rows>
        <details class="numbers"><summary>{words.why_asked()}</summary>{branches}</details>
        {cautions}
    }
    .into_any()
}
