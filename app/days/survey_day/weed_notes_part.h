// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/file_taker.h"
#include "app/days/survey_day/survey_step.h"
#include "app/widgets/plain_table.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace days::survey_day {

/// What was met of weed: the notes in a list, and the hand to add them at places, along a line, or
/// over an area.
class WeedNotesPart : public SurveyStep {
    Q_OBJECT
public:
    WeedNotesPart(SurveyContext context, FileTaker& taker);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;
    void hideEvent(QHideEvent* event) override;

private:
    /// Keeps what is being asked for, so that it can be let go of when the part is left.
    QString asking(const QString& prompt);
    void askPlaces();
    void askLine();
    void askArea();
    void add(weed::Extent extent, const std::vector<geo::WaterPoint>& corners);
    [[nodiscard]] std::optional<units::Length> heightTyped(const QString& text) const;
    void removeChosen();
    void lookAt(int row);

    widgets::PlainTable* notes_;
    QComboBox* kind_;
    QLabel* signs_; ///< What notes look like on the chart.
    widgets::AmountField* height_;
    widgets::AmountField* seen_;
    std::optional<units::Length> noted_; ///< Height that new notes get.
    std::optional<units::Day> day_;      ///< When new notes were seen.
    QString prompt_;
};

} // namespace days::survey_day
