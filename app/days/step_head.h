// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

namespace days {

/// The line that stands for a step: its title, and at the right, or below where there is no room,
/// its state. A click, Enter or the blank opens the step. Once it has needed a line of its own for
/// the state it keeps it until its width changes, so that nothing below it jumps with every value.
class StepHead : public QAbstractButton {
    Q_OBJECT
public:
    StepHead(const QString& title, const QString& key, QWidget* parent = nullptr);

    void setState(const QString& line, bool isStale);
    [[nodiscard]] QString state() const { return state_; }
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
    [[nodiscard]] QFont titleFont() const;
    [[nodiscard]] QFont stateFont() const;
    [[nodiscard]] QString shownState() const;
    [[nodiscard]] bool fitsBeside(int width) const;
    [[nodiscard]] int titleRow() const;
    [[nodiscard]] int stateRow() const;
    void paintArrow(QPainter& painter, QPointF middle) const;

    QString state_;
    bool isStale_ = false;
    bool isTight_ = false;
    bool hasNeededRow_ = false;
};

} // namespace days
