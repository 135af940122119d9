// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>
#include <QStringList>

namespace widgets {

/// One line of something that is not written down yet. What is offered stands in it pale, and is no
/// part of the entry until the key "=" takes it. Return goes on to the next line.
class EntryLine : public QLineEdit {
    Q_OBJECT
public:
    explicit EntryLine(QWidget* parent = nullptr);

    /// \param whenEmpty what an empty line means, "not known"; shown where nothing is offered.
    void setWhenEmpty(const QString& whenEmpty);
    void offer(const QString& offered);
    [[nodiscard]] const QString& offered() const { return offered_; }
    /// Words that what is typed may be the beginning of, the likeliest first.
    void complete(const QStringList& words);
    /// Whether what stands in the line can be used as it is.
    void setRight(bool isRight) { isRight_ = isRight; }
    [[nodiscard]] bool isRight() const { return isRight_; }
    /// Marks it where it is not right. \return whether it is.
    bool check();

signals:
    /// Return, on a line that is right.
    void goneOn();
    /// All of it is to be written down.
    void writeAsked();
    /// Escape.
    void left();
    void wrongChanged(bool isWrong);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void showOffered();
    void setWrong(bool isWrong);

    QString offered_;
    QString whenEmpty_;
    bool isRight_ = true;
    bool isWrong_ = false; ///< Marked as such.
};

} // namespace widgets
