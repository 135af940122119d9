// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include <functional>
#include <vector>

class QFormLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace days {

/// What an open step holds, laid out from top to bottom in one way for all steps.
class StepBody : public QWidget {
    Q_OBJECT
public:
    explicit StepBody(QWidget* parent = nullptr);

protected:
    /// A line or a few of faint text; hidden while it is empty (use setWords).
    QLabel* addWords();
    /// The same in the colour of warnings: for what can hurt.
    QLabel* addWarning();
    static void setWords(QLabel* label, const QString& words);
    QLabel* addHeading(const QString& words);
    /// A row of label and field; rows that follow one another share their columns.
    void addField(const QString& label, QWidget* field, const QString& help);
    /// Hides a field with its label, or shows it again.
    void setFieldShown(QWidget* field, bool isShown);
    void addRow(const std::vector<QWidget*>& widgets);
    void addWide(QWidget* widget);
    /// Scrolls the steps until all of it can be seen, once it is laid out.
    void bringIntoView(QWidget* widget);
    /// \param key "Ctrl+B"; shown in the tooltip after `help`.
    QPushButton* makeButton(const QString& words, const QString& key, const QString& help,
                            const std::function<void()>& act);

private:
    QVBoxLayout* column_;
    QFormLayout* form_ = nullptr;
};

} // namespace days
