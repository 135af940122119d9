// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

#include <functional>

namespace widgets {

/// A line to type an amount into, unit and all. What is no amount stays to be mended, marked, and
/// is told to nobody; Escape brings back what was shown before.
class AmountField : public QLineEdit {
    Q_OBJECT
public:
    /// \param isRight whether a text means an amount here. \param whenEmpty what an empty field
    /// means ("chosen from the soundings"), shown in it faintly; null where it may not be empty.
    AmountField(std::function<bool(const QString&)> isRight, const QString& whenEmpty,
                QWidget* parent = nullptr);

    /// Shows a value; leaves the field alone while it is being typed in.
    void showAmount(const QString& text);
    [[nodiscard]] bool isWrong() const { return isWrong_; }

signals:
    /// The user has finished typing something else that is right.
    void entered(const QString& text);
    /// The field became wrong, or right again.
    void wrongChanged(bool isWrong);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void finish();
    void setWrong(bool isWrong);

    std::function<bool(const QString&)> isRight_;
    bool mayBeEmpty_;
    bool isWrong_ = false;
    QString shown_;
};

} // namespace widgets
