// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/water/document/water.h"
#include "core/water/steps/bring_in_log.h"

#include <string>
#include <vector>

namespace water {

/// What another water file of the same water holds that this one does not.
struct PartnerBroughtIn {
    std::vector<soundings::SurveyDay> days; ///< With fresh ids.
    std::size_t knownDays = 0;
    /// Names of days of which some soundings are here already and others are not: brought in, they
    /// would count twice, so they are left out.
    std::vector<std::string> mixedDays;
    std::vector<soundings::LeadLineSounding> leadLine; ///< Below this water's chart level.
    std::vector<weed::WeedNote> weedNotes;
    LogBroughtIn log;
    /// How much higher the other's chart level is on the gauge; the lead line has been put right by
    /// it, and days have gauge levels of their own.
    units::Length chartLevelAbove;
};

struct PartnerSettings {
    Sharing sharing{OtherAngler::ask, true};
    std::string who; ///< Who fished the stays of which the other file does not say.
};

/// Sorts what another water holds: what is known here stays as it is here. \param where the other
/// file, for the error. \return unusableInput where it is another water (the error says how far
/// off), or holds nothing; cancelled.
[[nodiscard]] base::Result<PartnerBroughtIn> bringInPartner(const Water& water, const Water& other,
                                                            const PartnerSettings& settings,
                                                            const std::string& where,
                                                            base::Progress& progress);

} // namespace water
