//! Pictures: a file or what the camera sees is drawn small and packed, and a kept picture gets an address to be shown by.
//!
//! Drawing leaves behind what the file said beside the picture, and [`Picture`] takes nothing else in. The way a camera
//! was held is drawn in.

use super::browser::property;
use js_sys::{Array, Promise, Reflect, Uint8Array};
use tussock_core::log::{LogError, Picture};
use tussock_core::units::Instant;
use tussock_flow::forms::photo::tries;
use tussock_flow::views::photo::Trouble;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, CanvasRenderingContext2d, File, HtmlCanvasElement, HtmlImageElement,
    HtmlInputElement, HtmlVideoElement, Url,
};

/// The type in which pictures are kept.
const JPEG: &str = "image/jpeg";

/// A file that was chosen or just taken.
pub struct Chosen {
    file: File,
    /// When it was made, by what it says.
    pub at: Instant,
}

/// The file of an input, which is empty again afterwards: the same file can be chosen twice.
pub fn chosen(input: &HtmlInputElement) -> Option<Chosen> {
    let file = input.files()?.get(0)?;
    input.set_value("");
    #[allow(
        clippy::cast_possible_truncation,
        reason = "milliseconds stay below 2^53"
    )]
    let at = Instant::from_ms(file.last_modified() as i64);
    Some(Chosen { file, at })
}

/// A picture with an address for as long as this is held.
pub struct Shown(String);

impl Shown {
    /// Of kept bytes.
    pub fn of(bytes: &[u8]) -> Option<Self> {
        let kind = BlobPropertyBag::new();
        kind.set_type(JPEG);
        let parts = Array::of1(&Uint8Array::from(bytes));
        let blob = Blob::new_with_u8_array_sequence_and_options(&parts, &kind).ok()?;
        Self::of_blob(&blob)
    }

    fn of_blob(blob: &Blob) -> Option<Self> {
        Url::create_object_url_with_blob(blob).ok().map(Self)
    }

    /// The address.
    pub fn address(&self) -> &str {
        &self.0
    }
}

impl Drop for Shown {
    fn drop(&mut self) {
        // An address that is gone already needs no giving back.
        let _ = Url::revoke_object_url(&self.0);
    }
}

/// The picture of a file, made small.
///
/// # Errors
/// No picture that this browser can draw, or one that stays too large.
pub async fn of_file(chosen: &Chosen) -> Result<Picture, Trouble> {
    let shown = Shown::of_blob(&chosen.file).ok_or(Trouble::NotAPicture)?;
    let image = HtmlImageElement::new().map_err(|_| Trouble::NotAPicture)?;
    let loaded = Promise::new(&mut |resolve, reject| {
        image.set_onload(Some(&resolve));
        image.set_onerror(Some(&reject));
        image.set_src(shown.address());
    });
    JsFuture::from(loaded)
        .await
        .map_err(|_| Trouble::NotAPicture)?;
    let size = (image.natural_width(), image.natural_height());
    small(size, |canvas, (width, height)| {
        canvas.draw_image_with_html_image_element_and_dw_and_dh(&image, 0.0, 0.0, width, height)
    })
    .await
}

/// What a live view shows now, made small.
///
/// # Errors
/// It shows nothing yet, or stays too large.
pub async fn of_view(video: &HtmlVideoElement) -> Result<Picture, Trouble> {
    let size = (video.video_width(), video.video_height());
    small(size, |canvas, (width, height)| {
        canvas.draw_image_with_html_video_element_and_dw_and_dh(video, 0.0, 0.0, width, height)
    })
    .await
    .map_err(|trouble| match trouble {
        Trouble::NotAPicture => Trouble::CameraFailed,
        trouble => trouble,
    })
}

type Size = (f64, f64);

/// Draws a picture once, and packs it until it fits: what moves is the same in every try.
async fn small(
    (width, height): (u32, u32),
    draw: impl Fn(&CanvasRenderingContext2d, Size) -> Result<(), JsValue>,
) -> Result<Picture, Trouble> {
    let mut first: Option<Canvas> = None;
    let mut smaller: Option<Canvas> = None;
    for one in tries(width, height) {
        let size = (one.width, one.height);
        match &first {
            None => first = Some(Canvas::drawn(size, &draw).ok_or(Trouble::NotAPicture)?),
            Some(first) if smaller.as_ref().unwrap_or(first).size() != size => {
                let again = Canvas::drawn(size, |canvas, (width, height)| {
                    canvas.draw_image_with_html_canvas_element_and_dw_and_dh(
                        &first.0, 0.0, 0.0, width, height,
                    )
                });
                smaller = Some(again.ok_or(Trouble::NotAPicture)?);
            }
            Some(_) => {}
        }
        let Some(canvas) = smaller.as_ref().or(first.as_ref()) else {
            return Err(Trouble::NotAPicture);
        };
        let bytes = canvas
            .packed(one.quality)
            .await
            .ok_or(Trouble::NotAPicture)?;
        match Picture::of_jpeg(&bytes) {
            Ok(picture) => return Ok(picture),
            // Still too large: the next try.
            Err(LogError::NotAllowed { .. }) => {}
            Err(_) => return Err(Trouble::NotAPicture),
        }
    }
    Err(if first.is_some() {
        Trouble::TooLarge
    } else {
        Trouble::NotAPicture
    })
}

/// A canvas that gives its memory back when it is let go: some phones have little for them.
struct Canvas(HtmlCanvasElement);

impl Canvas {
    fn drawn(
        (width, height): (u32, u32),
        draw: impl Fn(&CanvasRenderingContext2d, Size) -> Result<(), JsValue>,
    ) -> Option<Self> {
        let document = web_sys::window()?.document()?;
        let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
        let canvas = Self(canvas);
        canvas.0.set_width(width);
        canvas.0.set_height(height);
        let context: CanvasRenderingContext2d =
            canvas.0.get_context("2d").ok()??.dyn_into().ok()?;
        // A browser that does not know it draws a little rougher.
        let _ = Reflect::set(&context, &"imageSmoothingQuality".into(), &"high".into());
        let size = (f64::from(width), f64::from(height));
        // What can be seen through has white behind it: a JPEG would make it black.
        context.set_fill_style_str("white");
        context.fill_rect(0.0, 0.0, size.0, size.1);
        draw(&context, size).ok()?;
        Some(canvas)
    }

    fn size(&self) -> (u32, u32) {
        (self.0.width(), self.0.height())
    }

    async fn packed(&self, quality: f64) -> Option<Vec<u8>> {
        let packed = Promise::new(&mut |resolve, reject| {
            let asked = self.0.to_blob_with_type_and_encoder_options(
                &resolve,
                JPEG,
                &JsValue::from_f64(quality),
            );
            if let Err(error) = asked {
                let _ = reject.call1(&JsValue::NULL, &error);
            }
        });
        let blob: Blob = JsFuture::from(packed).await.ok()?.dyn_into().ok()?;
        let bytes = JsFuture::from(blob.array_buffer()).await.ok()?;
        // Without bytes there is nothing to read the length of.
        property(&bytes, "byteLength").as_f64()?;
        Some(Uint8Array::new(&bytes).to_vec())
    }
}

impl Drop for Canvas {
    fn drop(&mut self) {
        self.0.set_width(0);
        self.0.set_height(0);
    }
}
