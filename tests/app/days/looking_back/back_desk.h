// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/chart_link.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/edits/set_plan.h"
#include "app/widgets/entry_line.h"
#include "app/widgets/plain_table.h"
#include "tests/support/desk_bowl.h"

#include <QApplication>
#include <QLabel>
#include <QMainWindow>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <stdexcept>

#include <gtest/gtest.h>

namespace support {

/// Looking back in a window of its own, worked by keys alone, each of which is counted; the water
/// is a small one with a day planned, and nothing in its log.
class BackDesk : public testing::Test {
protected:
    void SetUp() override {
        preferences_.setUnits(preferences::UnitSystem::metric);
        ASSERT_TRUE(open_.create(folder_.filePath("bowl.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(layBowl(open_));
        edits::setPlan(open_, "Set", [](marks::Plan& plan) {
            plan.count = 4;
            plan.tackle.rods = 3;
            plan.day.day = units::dayFrom("2026-10-03").value();
        });
        open_.planTomorrow();
        settle();
        ASSERT_TRUE(open_.planned());
        ASSERT_EQ(open_.planned()->day.stops.size(), 4U);
        day_ = new days::looking_back::LookingBackDay(context_);
        window_.setCentralWidget(day_);
        window_.resize(400, 900);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        turn();
    }
    void settle() { open_.jobs().finishAll(); }
    /// What was changed is shown when the event loop comes round.
    void turn() {
        settle();
        QCoreApplication::processEvents();
        day_->findChild<days::Refresher*>()->finish();
    }

    /// One key, to whatever has the focus.
    void press(Qt::Key key, Qt::KeyboardModifiers with = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus != nullptr ? focus : &window_, key, with);
        ++keys_;
        turn();
    }
    void type(const QString& text) {
        for (const QChar letter : text) {
            ASSERT_NE(QApplication::focusWidget(), nullptr) << text.toStdString();
            QTest::keyClick(QApplication::focusWidget(), letter.toLatin1());
            ++keys_;
        }
    }
    /// A line typed and left by Return.
    void enter(const QString& text) {
        type(text);
        press(Qt::Key_Return);
    }
    /// How many keys since it was asked last.
    int keys() { return std::exchange(keys_, 0); }

    static QString focused() {
        const QWidget* focus = QApplication::focusWidget();
        return focus == nullptr ? QString() : focus->accessibleName();
    }
    template <class Widget>
    Widget& named(const QString& name) {
        for (Widget* each : day_->findChildren<Widget*>()) {
            if (each->isVisible() &&
                (each->accessibleName() == name || each->property("text").toString() == name)) {
                return *each;
            }
        }
        throw std::logic_error("nothing to be seen is called " + name.toStdString());
    }
    bool says(const QString& words) {
        for (const QLabel* label : day_->findChildren<QLabel*>()) {
            if (label->isVisible() && label->text().contains(words)) {
                return true;
            }
        }
        return false;
    }
    [[nodiscard]] logbook::Log log() const { return open_.water()->log.copied(); }
    [[nodiscard]] units::Moment at(const char* text) const {
        return units::momentFrom(text, open_.water()->clock).value();
    }
    [[nodiscard]] geo::LonLat placeOf(int rank) const {
        for (const marks::Mark& mark : open_.planned()->marks) {
            if (mark.rank == rank) {
                return mark.lonLat;
            }
        }
        throw std::logic_error("no such mark");
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::DayContext context_{open_, preferences_, chart_};
    QMainWindow window_; // before what it shows is asked for: after the water
    days::looking_back::LookingBackDay* day_ = nullptr;
    int keys_ = 0;
};

} // namespace support
