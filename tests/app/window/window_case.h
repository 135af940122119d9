// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/chart/chart_canvas.h"
#include "app/days/survey_day/survey_day.h"
#include "app/window/bottom_line.h"
#include "app/window/main_window.h"
#include "app/window/style.h"
#include "app/window/top_line.h"

#include <gtest/gtest.h>

#include <QAction>
#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QSettings>
#include <QShortcut>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QToolButton>

#include <memory>

namespace window_case {

/// The window as it comes up for somebody who has never used it.
class Window : public testing::Test {
protected:
    void SetUp() override {
        QStandardPaths::setTestModeEnabled(true);
        QCoreApplication::setOrganizationName(QStringLiteral("Meremark tests"));
        QCoreApplication::setApplicationName(QStringLiteral("window"));
        QSettings().clear();
        window::applyStyle(*qApp);
        window_ = std::make_unique<window::MainWindow>(unnamed_);
    }
    void TearDown() override {
        window_.reset();
        QSettings().clear();
    }

    open_water::OpenWater& open() { return window_->open(); }
    chart::ChartCanvas& canvas() { return *window_->findChild<chart::ChartCanvas*>(); }
    QStackedWidget& days() {
        auto* survey = window_->findChild<days::survey_day::SurveyDay*>();
        return *qobject_cast<QStackedWidget*>(survey->parentWidget());
    }
    QString said() { return window_->bottomLine().said(); }
    bool isWrong() {
        return window_->findChild<QLabel*>(QStringLiteral("said"))->property("wrong").toBool();
    }
    /// The first button, label or action with these words; a failure where there is none.
    QToolButton& button(const QString& words) { return one<QToolButton>(words); }
    QLabel& label(const QString& words) { return one<QLabel>(words); }
    bool hasLabel(const QString& words) {
        for (const QLabel* each : window_->findChildren<QLabel*>()) {
            if (each->text() == words) {
                return true;
            }
        }
        return false;
    }
    QAction& action(const QString& words) {
        for (QAction* each : window_->actions()) {
            if (each->text() == words) {
                return *each;
            }
        }
        throw std::runtime_error("no action " + words.toStdString());
    }
    void press(const QString& keys) {
        for (QShortcut* each : window_->findChildren<QShortcut*>()) {
            if (each->key() == QKeySequence(keys)) {
                emit each->activated();
                return;
            }
        }
        ADD_FAILURE() << "nothing on " << keys.toStdString();
    }

    /// Opens the water and waits until that is over.
    void openWater(const QString& path) {
        window_->openWater(path);
        open().opening().finishAll();
    }

    QTemporaryDir folder_;
    QString unnamed_ = folder_.filePath(QStringLiteral("unnamed"));
    std::unique_ptr<window::MainWindow> window_;

private:
    template <class Widget>
    Widget& one(const QString& words) {
        for (Widget* each : window_->findChildren<Widget*>()) {
            if (each->text() == words) {
                return *each;
            }
        }
        throw std::runtime_error("there is no " + words.toStdString());
    }
};

} // namespace window_case
