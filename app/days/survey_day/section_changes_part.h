// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/survey_step.h"

#include <optional>

namespace days::survey_day {

/// Within "Sections": what the user wants otherwise than the division made it. Two sections become
/// one, one is cut, a border is moved; each is shown on the chart by pointing and drawing.
class SectionChangesPart : public SurveyStep {
    Q_OBJECT
public:
    explicit SectionChangesPart(SurveyContext context);

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;
    void hideEvent(QHideEvent* event) override;

private:
    enum class Hand { none, join, split, border };

    QPushButton* makeHand(Hand hand, const QString& words, const QString& key, const QString& help);
    void take(Hand hand);
    void askLineOfCut();
    void askFirst();
    void askNeighbourOf(geo::WaterPoint first);
    void askBorder(geo::WaterPoint first, geo::WaterPoint second);
    /// Remembers what is asked, so that the button stays down until something else is.
    QString asking(const QString& prompt);
    /// A place well inside the section that was pointed at; nothing, and told, where there is none.
    [[nodiscard]] std::optional<geo::WaterPoint> sectionUnder(geo::WaterPoint place);
    [[nodiscard]] bool isDone(const base::Result<void>& done);

    Hand hand_ = Hand::none;
    QString prompt_;
    QPushButton* join_ = nullptr;
    QPushButton* split_ = nullptr;
    QPushButton* border_ = nullptr;
    QPushButton* takeBack_ = nullptr;
    QPushButton* takeBackAll_ = nullptr;
    QLabel* words_ = nullptr;
};

} // namespace days::survey_day
