// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/set_plan.h"
#include "app/widgets/plain_table.h"
#include "tests/support/desk_bowl.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <functional>
#include <memory>
#include <stdexcept>

#include <gtest/gtest.h>

namespace support {

/// Tomorrow at the desk with a small water, planned once for a suite; each test is undone.
class TomorrowDesk : public testing::Test {
protected:
    struct Desk {
        QTemporaryDir folder;
        open_water::OpenWater open;
        preferences::Preferences preferences;
        days::ChartLink chart{open, preferences};
        days::DayContext context{open, preferences, chart};
        std::unique_ptr<days::tomorrow::TomorrowDay> day;
    };

    static void SetUpTestSuite() {
        sitDown();
        layPlanned([](marks::Plan& plan) { plan.count = 4; });
    }
    /// The desk with a file in which there is no water yet.
    static void sitDown() {
        desk_ = std::make_unique<Desk>();
        ASSERT_TRUE(desk_->open.create(desk_->folder.filePath("bowl.gpkg"), "Skarrow Water"));
        desk_->day = std::make_unique<days::tomorrow::TomorrowDay>(desk_->context);
    }
    static void layPlanned(const std::function<void(marks::Plan&)>& wishes) {
        ASSERT_TRUE(layBowl(desk_->open));
        edits::setPlan(desk_->open, "Set", wishes);
        replan();
        ASSERT_TRUE(desk_->open.planned());
        done_ = desk_->open.undoStack().index();
    }
    static void TearDownTestSuite() { desk_.reset(); }
    void TearDown() override {
        while (desk_->open.undoStack().index() > done_) {
            desk_->open.undoStack().undo();
        }
        if (!desk_->open.isPlanCurrent()) {
            replan();
        }
    }

    static void replan() {
        desk_->open.planTomorrow();
        desk_->open.jobs().finishAll();
    }
    /// What was changed is shown when the event loop comes round.
    static void turn() { desk_->day->findChild<days::Refresher*>()->finish(); }
    static void openStep(int step) { desk_->day->steps().openStep(step); }
    static open_water::OpenWater& open() { return desk_->open; }
    static const water::Water& water() { return *desk_->open.water(); }
    static const water::PlannedDay& planned() { return *desk_->open.planned(); }

    /// The first widget of that accessible name or text.
    template <class Widget>
    static Widget& named(const QString& name) {
        turn();
        for (Widget* each : desk_->day->findChildren<Widget*>()) {
            if (each->accessibleName() == name || each->property("text").toString() == name) {
                return *each;
            }
        }
        throw std::logic_error("nothing is called " + name.toStdString());
    }
    static QPushButton& button(const QString& words) { return named<QPushButton>(words); }
    static widgets::PlainTable& table(const QString& name) {
        return named<widgets::PlainTable>(name);
    }
    /// Whether words stand somewhere in the steps, not hidden.
    static bool says(const QString& words) { return timesSaid(words) > 0; }
    /// \param voice empty: in any.
    static std::ptrdiff_t timesSaid(const QString& words, const QString& voice = {}) {
        turn();
        return std::ranges::count_if(desk_->day->findChildren<QLabel*>(), [&](const auto* label) {
            return label->text() == words && !label->isHidden() &&
                   (voice.isEmpty() || label->property("voice").toString() == voice);
        });
    }

    static inline std::unique_ptr<Desk> desk_;
    static inline int done_ = 0;
};

} // namespace support
