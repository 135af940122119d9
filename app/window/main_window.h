// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

#include <QMainWindow>

class QAction;
class QStackedWidget;

namespace chart {
class ChartCanvas;
}
namespace days::survey_day {
class SurveyDay;
}
namespace days::tomorrow {
class TomorrowDay;
}
namespace days::looking_back {
class LookingBackDay;
}
namespace side_view {
class SideView;
}

namespace window {

class BottomLine;
class TopLine;

/// The one window: chart and side view for all three days, the steps of the day at the right.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow();
    ~MainWindow() override;

    /// Opens a water file; says so in the bottom line where it cannot.
    void openWater(const QString& path);
    void showDay(int day);
    [[nodiscard]] open_water::OpenWater& open() { return open_; }
    [[nodiscard]] BottomLine& bottomLine() { return *bottom_; }

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void layOut();
    void layDays();
    void wireChart();
    void wireWater();
    void layWaterMenu();
    void layLayersMenu();
    void fillRecent(QMenu* recent);
    void askNewWater();
    void askOpenWater();
    void askFolderToGive();
    void showKeys();
    void showAbout();
    void showName();
    void takeContent();
    void showCutOfMark();
    void tellDrawn();
    void tellPlanned();
    void tellAsking();
    [[nodiscard]] QString asked() const; ///< What the chart is being asked; empty for nothing.

    preferences::Preferences preferences_;
    open_water::OpenWater open_;
    days::ChartLink link_;
    TopLine* top_ = nullptr;
    BottomLine* bottom_ = nullptr;
    chart::ChartCanvas* canvas_ = nullptr;
    side_view::SideView* side_ = nullptr;
    QStackedWidget* days_ = nullptr;
    days::survey_day::SurveyDay* survey_ = nullptr;
    days::tomorrow::TomorrowDay* tomorrow_ = nullptr;
    days::looking_back::LookingBackDay* back_ = nullptr;
    std::optional<int> cutMark_; ///< The mark that the side view shows, and of which plan.
    std::shared_ptr<const water::PlannedDay> cutPlan_;
};

} // namespace window
