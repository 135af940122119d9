// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "core/geo/path.h"

namespace edits {

/// Each corrects the division into sections, which is kept and made again whenever the map is drawn
/// anew. Sections are named by a place inside them. \return why it cannot be done on the map as it
/// is now; nothing is changed then.
[[nodiscard]] base::Result<void> joinSections(open_water::OpenWater& open, geo::WaterPoint a,
                                              geo::WaterPoint b);
[[nodiscard]] base::Result<void> splitSection(open_water::OpenWater& open, const geo::Path& line);
/// The border between the two runs along the line.
[[nodiscard]] base::Result<void> moveBorder(open_water::OpenWater& open, geo::WaterPoint a,
                                            geo::WaterPoint b, const geo::Path& line);

/// Takes the last correction back, whenever it was made.
void takeBackSectionChange(open_water::OpenWater& open);
/// Takes all of them back: the sections are those of the division again.
void takeBackSectionChanges(open_water::OpenWater& open);

} // namespace edits
