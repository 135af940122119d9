// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/view_frame.h"
#include "app/days/day_step.h"
#include "app/days/refresher.h"
#include "core/water/document/derived.h"

#include <QStringList>

#include <set>
#include <vector>

namespace days {
class BackdropKeeper;
class StepPanel;
} // namespace days

namespace days::survey_day {

class FileTaker;

/// The survey day: from soundings brought in to sections, and to where to sound next.
class SurveyDay : public QWidget {
    Q_OBJECT
public:
    explicit SurveyDay(DayContext context, QWidget* parent = nullptr);
    ~SurveyDay() override;
    SurveyDay(const SurveyDay&) = delete;
    SurveyDay& operator=(const SurveyDay&) = delete;
    SurveyDay(SurveyDay&&) = delete;
    SurveyDay& operator=(SurveyDay&&) = delete;

    [[nodiscard]] StepPanel& steps() { return *panel_; }
    /// Brings files into the open water, whatever they are about.
    void takeFiles(const QStringList& paths);
    [[nodiscard]] bool isTakingFiles() const;
    /// What the chart shows, for the backdrop.
    void lookAt(const chart::ViewFrame& view);

signals:
    /// One of the files is a water of its own.
    void waterFound(const QString& path);
    void dayTrackFound(const QString& path);

private:
    void findStale();
    void refresh();
    void showLine(int position, const DayStepLine& line);
    void redoWhatChanged(const std::set<water::Part>& parts);

    DayContext context_;
    FileTaker* taker_;
    BackdropKeeper* backdrop_;
    StepPanel* panel_;
    std::vector<DayStep*> steps_;
    Refresher* refresher_;
    std::set<water::Step> stale_;
};

} // namespace days::survey_day
