// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/partner.h"

#include "core/acts/notes.h"
#include "core/acts/stays.h"
#include "core/acts/survey_days.h"

namespace acts {

base::Result<water::Water> addPartner(const water::Water& water,
                                      const water::PartnerBroughtIn& brought,
                                      water::Sharing sharing) {
    base::Result<water::Water> after = water;
    for (const soundings::SurveyDay& day : brought.days) {
        if (after) {
            after = addSurveyDay(*after, day);
        }
    }
    if (after && !brought.leadLine.empty()) {
        after = addLeadLine(*after, brought.leadLine);
    }
    if (after && !brought.weedNotes.empty()) {
        after = addWeedNotes(*after, brought.weedNotes);
    }
    if (after && !brought.log.stays.empty()) {
        after = addStays(*after, brought.log.stays, sharing);
    }
    return after;
}

} // namespace acts
