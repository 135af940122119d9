// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/survey_day/hypsography_view.h"

#include <QWidget>

class QChartView;
class QLabel;

namespace widgets {
class PlainTable;
}

namespace days::survey_day {

/// Area and volume against depth: a curve with the depth downwards, and below it the table, which
/// Ctrl+C or the button puts on the clipboard.
class HypsographyPart : public QWidget {
    Q_OBJECT
public:
    explicit HypsographyPart(QWidget* parent = nullptr);

    /// Hides itself where there is nothing to show.
    void show(const HypsographyView& view);

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw();
    void copy();

    HypsographyView view_;
    QChartView* curve_;
    QLabel* about_;
    widgets::PlainTable* table_;
    QLabel* copied_;
};

} // namespace days::survey_day
