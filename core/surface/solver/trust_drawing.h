// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/surface/solver/trust_calibration.h"
#include "core/surface/trust.h"

namespace surface::solver {

/// The trust of each cell of `bottom` as the error grows from the soundings at `positions`.
/// \return cancelled.
[[nodiscard]] base::Result<TrustGrid> drawTrust(const Ground& ground, const Bottom& bottom,
                                                std::span<const soundings::KeptSounding> soundings,
                                                std::span<const std::size_t> positions,
                                                const ErrorGrowth& growth, int threads,
                                                base::Progress& progress);

/// Half-widths without bound, for a quick look.
[[nodiscard]] base::Result<TrustGrid> noTrust(const Ground& ground);

} // namespace surface::solver
