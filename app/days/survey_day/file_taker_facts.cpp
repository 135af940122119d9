// SPDX-License-Identifier: GPL-3.0-or-later
// What files tell of the water and of its survey days.
#include "app/days/survey_day/file_taker.h"

#include "app/edits/change_water.h"
#include "app/wording/survey_words.h"
#include "core/acts/survey_days.h"

#include <QFileInfo>

#include <algorithm>

namespace days::survey_day {

using base::Result;

void FileTaker::takeDayFacts(const QString& path) {
    const auto facts = water::bringInDayFacts(path.toStdString());
    if (!facts) {
        fail(facts.error());
        return;
    }
    for (const readers::SurveyDayFacts& day : *facts) {
        facts_[day.file] = day;
    }
    // The unit was settled when the file was read; all else reaches days that are in already.
    const std::vector<soundings::SurveyDay> before = context_.open.water()->days;
    edits::act(context_.open, tr("Bring in facts of days"),
               [this](const water::Water& water) { return withFacts(water); });
    done(tr("Facts of %L1 survey days; those still to come get theirs as their files come in.")
             .arg(facts->size()) +
         whatWasDropped(before));
}

Result<water::Water> FileTaker::withFacts(const water::Water& water) const {
    Result<water::Water> after = water;
    for (const soundings::SurveyDay& day : water.days) {
        if (const auto known = facts_.find(day.source); after && known != facts_.end()) {
            after = acts::changeSurveyDay(*after, day.id, [&](soundings::SurveyDay& changed) {
                water::applyFacts(known->second, changed);
            });
        }
    }
    return after;
}

QString FileTaker::whatWasDropped(const std::vector<soundings::SurveyDay>& before) const {
    QString words;
    for (const soundings::SurveyDay& day : context_.open.water()->days) {
        const auto was = std::ranges::find(before, day.id, &soundings::SurveyDay::id);
        if (was != before.end()) {
            const QString dropped =
                wording::agreementDropped(*was, day, wording::Words(context_.preferences.units()));
            words += dropped.isEmpty() ? QString() : ' ' + dropped;
        }
    }
    return words;
}

void FileTaker::takeWaterFacts(const QString& path) {
    water::Water trial = *context_.open.water();
    if (const auto read = water::bringInFacts(trial, path.toStdString()); !read) {
        fail(read.error());
        return;
    }
    edits::change(context_.open, tr("Bring in facts"), {water::Part::facts, water::Part::plan},
                  [&](water::Water& w) {
                      w.name = trial.name;
                      w.clock = trial.clock;
                      w.chartLevel = trial.chartLevel;
                      w.places = trial.places;
                      w.settings.secchi = trial.settings.secchi;
                      w.plan.launch = trial.plan.launch;
                  });
    done(tr("Facts of the water from %1.").arg(QFileInfo(path).fileName()));
}

} // namespace days::survey_day
