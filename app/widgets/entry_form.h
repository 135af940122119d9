// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/widgets/entry_line.h"

#include <QFrame>

#include <vector>

class QGridLayout;
class QLabel;
class QPushButton;

namespace widgets {

/// How one line of an entry is called.
struct EntryField {
    QString label;
    QString help;
    QString whenEmpty;
    QString hint;        ///< Said where what is typed cannot be used.
    bool isWide = false; ///< Takes a row for itself.
};

/// A slip of paper: a few lines, two beside one another, that are typed one after the other and
/// written down together, or not at all. Return passes over lines that were filled for the hand. It
/// is seen only while it is filled in.
class EntryForm : public QFrame {
    Q_OBJECT
public:
    /// \param writeWords on the button that writes it down.
    EntryForm(const std::vector<EntryField>& fields, const QString& writeWords,
              QWidget* parent = nullptr);

    /// Shows it empty, with nothing offered; the hand goes to line `first`.
    void begin(const QString& title, int first = 0);
    void end();
    [[nodiscard]] bool isUnderWay() const { return isVisibleTo(parentWidget()); }
    [[nodiscard]] EntryLine& line(int field) { return *lines_.at(static_cast<std::size_t>(field)); }
    [[nodiscard]] QString text(int field) const;
    void setFieldShown(int field, bool isShown);
    /// A button of its own beside the one that writes.
    void addButton(QPushButton* button);
    /// What the entry comes to, as far as it is typed.
    void say(const QString& words);
    /// What of it can hardly be so.
    void warn(const QString& words);

signals:
    void changed();
    /// Everything in it is right, and is to be written down.
    void writeAsked();
    void left();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void goOn(std::size_t from);
    void askToWrite();
    [[nodiscard]] bool isShown(std::size_t field) const;

    std::vector<EntryLine*> lines_;
    std::vector<QLabel*> names_;
    std::vector<QString> hints_;
    QLabel* title_;
    QLabel* hint_;
    QLabel* said_;
    QLabel* warned_;
    QPushButton* write_;
    QGridLayout* grid_;
};

} // namespace widgets
