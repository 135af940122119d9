// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/lead_line_view.h"
#include "app/days/survey_day/survey_step.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace widgets {
class PlainTable;
}

namespace days::survey_day {

/// Within "Bring in soundings": single soundings by hand, typed or pointed at on the chart, each
/// with what the lead felt. What stands in the fields belongs to the chosen sounding, or to the
/// next one.
class LeadLinePart : public SurveyStep {
    Q_OBJECT
public:
    explicit LeadLinePart(SurveyContext context);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;

private:
    void layFields();
    void choose(int row);
    void askPlaces();
    void addTyped();
    void changeChosen();
    void removeChosen();
    void showButtons();
    /// What the fields say; nothing where the depth or the level is none.
    [[nodiscard]] std::optional<units::Depth> depth() const;
    [[nodiscard]] const soundings::LeadLineSounding* chosen() const;

    widgets::PlainTable* table_ = nullptr;
    QLabel* about_ = nullptr;
    QLineEdit* depth_ = nullptr;
    QLineEdit* level_ = nullptr;
    QLineEdit* place_ = nullptr;
    QComboBox* bottom_ = nullptr;
    QPushButton* onChart_ = nullptr;
    QPushButton* add_ = nullptr;
    QPushButton* change_ = nullptr;
    QPushButton* remove_ = nullptr;
};

} // namespace days::survey_day
