//! A short tone. A browser lets a page sound only after a tap, so the way to it is opened on one.

use std::cell::RefCell;
use tussock_flow::views::remind::Has;
use web_sys::{AudioContext, AudioContextState};

thread_local! {
    /// Made on a tap, kept while the page is open.
    static CONTEXT: RefCell<Option<AudioContext>> = const { RefCell::new(None) };
}

/// Three beeps: seconds from now at which each begins.
const BEEPS: [f64; 3] = [0.0, 0.35, 0.7];
/// How long each is, in seconds.
const LONG: f64 = 0.2;
/// How high, in Hz.
const HIGH: f32 = 880.0;
/// How loud, from 0 to 1.
const LOUD: f32 = 0.5;

/// Whether this browser can sound.
pub fn here() -> Has {
    if super::browser::global("AudioContext").is_function() {
        Has::Available
    } else {
        Has::NotHere
    }
}

/// Opens the way to a sound. Call it on a tap.
pub fn wake() {
    if here() != Has::Available {
        return;
    }
    CONTEXT.with_borrow_mut(|held| {
        if held.is_none() {
            *held = AudioContext::new().ok();
        }
        if let Some(context) = held
            && context.state() != AudioContextState::Running
        {
            super::browser::let_go(context.resume().ok().map(Into::into));
        }
    });
}

/// Whether a tap has opened the way.
pub fn ready() -> bool {
    CONTEXT.with_borrow(|held| {
        held.as_ref()
            .is_some_and(|context| context.state() == AudioContextState::Running)
    })
}

/// Sounds, where a tap has opened the way; else it is silent.
pub fn play() {
    CONTEXT.with_borrow(|held| {
        if let Some(context) = held {
            // A beep that does not come is missed with the page out of sight; the words on it stay.
            let _ = BEEPS.iter().try_for_each(|from| beep(context, *from));
        }
    });
}

fn beep(context: &AudioContext, from: f64) -> Result<(), wasm_bindgen::JsValue> {
    let tone = context.create_oscillator()?;
    let loud = context.create_gain()?;
    tone.frequency().set_value(HIGH);
    loud.gain().set_value(LOUD);
    tone.connect_with_audio_node(&loud)?;
    loud.connect_with_audio_node(&context.destination())?;
    let begins = context.current_time() + from;
    tone.start_with_when(begins)?;
    tone.stop_with_when(begins + LONG)
}
