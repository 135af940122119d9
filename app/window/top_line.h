// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/open_water/open_water.h"
#include "app/preferences/preferences.h"

#include <QWidget>

#include <array>

class QAction;
class QButtonGroup;
class QLabel;
class QMenu;
class QToolButton;

namespace widgets {
class ElidedLabel;
}

namespace window {

/// The line above the chart: the water's name, the three days, the level of the plan, the units,
/// undo and redo, and two small menus.
class TopLine : public QWidget {
    Q_OBJECT
public:
    TopLine(open_water::OpenWater& open, preferences::Preferences& preferences,
            QWidget* parent = nullptr);

    void showDay(int day);
    [[nodiscard]] QMenu* waterMenu() const { return waterMenu_; }
    [[nodiscard]] QMenu* layersMenu() const { return layersMenu_; }
    [[nodiscard]] QMenu* viewMenu() const { return viewMenu_; }

signals:
    void dayChosen(int day);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void refresh();
    /// Where there is little room for the name, the level goes first, then undo and redo are
    /// arrows, then the letters get smaller.
    void fit();
    /// How much the name lacks at the least width to be read whole.
    [[nodiscard]] int wholeNameLess() const;
    void sayUndo(bool inWords);
    QToolButton* addButton(const QString& text, const QString& help);
    QToolButton* addUnits(const QString& sign, preferences::UnitSystem units);
    QMenu* addMenu(const QString& text, const QString& help, const QString& key);

    open_water::OpenWater& open_;
    preferences::Preferences& preferences_;
    widgets::ElidedLabel* name_;
    QLabel* level_;
    bool isFitting_ = false;
    QButtonGroup* days_;
    QToolButton* metres_;
    QToolButton* feet_;
    QToolButton* undo_;
    QToolButton* redo_;
    QMenu* waterMenu_;
    QMenu* layersMenu_;
    QMenu* viewMenu_;
};

} // namespace window
