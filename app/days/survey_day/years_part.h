// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/survey_step.h"
#include "core/water/questions/compare_years.h"

#include <memory>
#include <optional>
#include <vector>

class QCheckBox;

namespace widgets {
class PlainTable;
}

namespace days::survey_day {

/// Within "Drawing": what the bottom has done since an earlier survey, kept in another file of the
/// same water. Compared anew whenever the water is drawn anew; nothing of it is kept.
class YearsPart : public SurveyStep {
    Q_OBJECT
public:
    explicit YearsPart(SurveyContext context);

    /// Compares with that water file.
    void compareWith(const QString& file);
    /// Shows none any more.
    void leave();

protected:
    DayStepLine refreshFrom(const ViewInput& input) override;

private:
    struct Earlier {
        water::Water water;
        std::shared_ptr<const surface::DrawnWater> drawn;
    };
    /// All that a comparison with one earlier survey is made from. A plan's Basis holds more: in
    /// another wind the bottom is the same.
    struct ComparedTo {
        std::shared_ptr<const surface::DrawnWater> drawn;
        units::WaterLevel chartLevel;
        std::vector<water::PinnedMark> marks;
        friend bool operator==(const ComparedTo&, const ComparedTo&) = default;
    };
    /// Of the water as it is; nothing as long as the map is not of now.
    [[nodiscard]] std::optional<ComparedTo> comparedNow() const;
    static base::Result<Earlier> read(const QString& file, base::Progress& progress);
    void ask();
    void tellUnlessStopped(const base::Error& error);
    void compare();
    void show(std::shared_ptr<const water::YearsCompared> years);

    std::shared_ptr<const Earlier> earlier_;
    std::optional<ComparedTo> comparedTo_; ///< What is told, or being worked out, is made from it.
    bool isAsked_ = false;                 ///< By the user, and not by another drawing.
    QPushButton* leave_;
    QCheckBox* isLevel_;
    QLabel* doubts_;
    QLabel* words_;
    widgets::PlainTable* marks_;
};

} // namespace days::survey_day
