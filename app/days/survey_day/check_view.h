// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/view_input.h"
#include "core/soundings/survey_day.h"
#include "core/soundings/verdict.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace days::survey_day {

/// The step "Check the soundings".
struct CheckView {
    /// What the crossings would add to one survey day.
    struct Offer {
        soundings::SurveyDayId day;
        QString words;          ///< "2026-09-12: 0.40 m deeper, ±0.02 m, from 61 crossings".
        bool isAgreed = false;  ///< Already part of the water; it can be taken back.
        bool isOffered = false; ///< There is something to agree to.
        units::Length offset;
    };
    /// How late the positions of one survey day are, as its crossings tell.
    struct DelayOffer {
        soundings::SurveyDayId day;
        QString words; ///< "2026-09-12: positions 1.2 s late (±0.1 s), from 61 crossings".
        bool isAgreed = false;
        bool isOffered = false;
        double delay_s = 0.0;
    };
    QString state;
    std::vector<QStringList> setAside;       ///< Reason, count; the most frequent first.
    std::vector<soundings::Verdict> reasons; ///< Of these rows.
    std::vector<Offer> offers;
    std::vector<DelayOffer> delays; ///< Only of days with something to agree to or to take back.
    QString gain; ///< What agreeing to all of them would bring; empty where nothing is offered.
};

[[nodiscard]] CheckView checkViewOf(const ViewInput& input);

} // namespace days::survey_day
