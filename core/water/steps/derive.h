// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

namespace water {

/// Stamps::of() for who asks for one step alone.
[[nodiscard]] Stamp stampOf(const Water& water, Step step);

/// Everything up to and including `upTo`, in order; of `before`, whatever still holds is kept and
/// only the rest is made again. The water must have a frame (see layFrame()).
///
/// Without a shoreline, one is assumed round the soundings and a note says so. A step that cannot
/// be made is told in Derived::failures, and what does not need it is made all the same. \return
/// wrongUse without a frame or with settings out of range; cancelled.
[[nodiscard]] base::Result<Derived> derive(const Water& water, const Derived& before, Step upTo,
                                           base::Progress& progress);

/// Only what a day is planned on: where the drawing in `before` holds, the soundings are not looked
/// over and nothing is traced, so that neither crossings nor contours are there afterwards; else
/// derive() up to Step::sections. The same errors.
[[nodiscard]] base::Result<Derived> deriveToPlan(const Water& water, const Derived& before,
                                                 base::Progress& progress);

/// The same with a drawing that was kept in the water file: taken as it is where its stamp is that
/// of the water.
[[nodiscard]] Derived withKeptDrawing(const Water& water, surface::DrawnWater drawn, Stamp stamp);

/// The same with the drawing, and all that stands on it, to be made anew.
[[nodiscard]] Derived withoutDrawing(Derived derived);

/// The same with the sections alone to be made anew.
[[nodiscard]] Derived withoutSections(Derived derived);

} // namespace water
