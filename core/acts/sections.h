// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/geo/path.h"
#include "core/sections/section.h"
#include "core/water/document/derived.h"
#include "core/water/document/water.h"

#include <string>

namespace acts {

/// Gives a section a name that stays with its place when the water is divided anew; an empty one
/// takes the given name away. Blanks at both ends do not count.
/// \param derived with the sections that the number is of. \return wrongUse where there is no such
/// section.
[[nodiscard]] base::Result<water::Water> nameSection(const water::Water& water,
                                                     const water::Derived& derived,
                                                     sections::SectionNumber section,
                                                     const std::string& name);

/// Each corrects the division into sections, which is kept and made again whenever the map is drawn
/// anew. Sections are named by a place inside them. \param derived made up to Step::sections.
/// \return why it cannot be done on the map as it is now.
[[nodiscard]] base::Result<water::Water> joinSections(const water::Water& water,
                                                      const water::Derived& derived,
                                                      geo::WaterPoint a, geo::WaterPoint b);
[[nodiscard]] base::Result<water::Water>
splitSection(const water::Water& water, const water::Derived& derived, const geo::Path& line);
/// The border between the two runs along the line.
[[nodiscard]] base::Result<water::Water> moveBorder(const water::Water& water,
                                                    const water::Derived& derived,
                                                    geo::WaterPoint a, geo::WaterPoint b,
                                                    const geo::Path& line);

/// Takes the last correction back, whenever it was made.
[[nodiscard]] base::Result<water::Water> takeBackSectionChange(const water::Water& water);
/// Takes all of them back: the sections are those of the division again.
[[nodiscard]] base::Result<water::Water> takeBackSectionChanges(const water::Water& water);

} // namespace acts
