// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/rates/rate.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <filesystem>
#include <memory>
#include <string>

namespace batch {

// Pictures and sheets, drawn without a display and written whole or not at all.

/// The chart, with the marks where `planned` is not null.
[[nodiscard]] base::Result<void> writePicture(const std::filesystem::path& path,
                                              const water::Water& water,
                                              const water::Derived& derived,
                                              std::shared_ptr<const water::PlannedDay> planned);
/// Shore and depths alone, `side` by `side` pixels: what a file manager shows of a water.
[[nodiscard]] base::Result<void> writeSmallPicture(const std::filesystem::path& path,
                                                   const std::shared_ptr<const water::Water>& water,
                                                   const water::Derived& kept, int side);
/// Rates as bars with their intervals.
[[nodiscard]] base::Result<void> writeRatesPicture(const std::filesystem::path& path,
                                                   const rates::RateTable& table,
                                                   const std::string& title);
/// How the sheet was asked for: paper by its name in lower case, A4 where empty.
struct SheetWish {
    std::string paper;
    bool hasPictures = false;
};

/// The day sheet as PDF.
[[nodiscard]] base::Result<void> writeSheet(const std::filesystem::path& path,
                                            const water::Water& water,
                                            const water::Derived& derived,
                                            std::shared_ptr<const water::PlannedDay> planned,
                                            const SheetWish& wish);

} // namespace batch
