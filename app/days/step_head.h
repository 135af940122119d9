// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace days {

/// The line that stands for a step: its title, and at the right, or below where there is no room,
/// its state. A click, Enter or the blank opens the step. Where the state would need a line of its
/// own once it is out of date, it has it from the start, and a line that it has needed it keeps
/// until its width changes: so nothing below it jumps with every value.
class StepHead : public QAbstractButton {
    Q_OBJECT
public:
    StepHead(const QString& title, const QString& key, QWidget* parent = nullptr);

    void setState(const QString& line, bool isStale);
    [[nodiscard]] QString state() const { return state_; }
    /// While something below it is pointed at, it does not grow: a state that has become too long
    /// ends in dots until the hand has gone.
    void setStill(bool isStill);
    /// Less air above and below, for a low window.
    void setTight(bool isTight);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void growIfNeeded();
    [[nodiscard]] QFont titleFont() const;
    [[nodiscard]] QFont stateFont() const;
    [[nodiscard]] static QString outOfDate(const QString& state);
    [[nodiscard]] QString shownState() const;
    [[nodiscard]] int titleWidth() const;
    [[nodiscard]] bool fitsBeside(int width) const;
    [[nodiscard]] int titleRow() const;
    [[nodiscard]] int stateRow() const;
    void paintArrow(QPainter& painter, QPointF middle) const;

    QString state_;
    bool isStale_ = false;
    bool isTight_ = false;
    bool isStill_ = false;
    bool hasNeededRow_ = false;
};

} // namespace days
