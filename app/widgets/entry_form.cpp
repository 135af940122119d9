// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/widgets/entry_form.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

namespace widgets {

namespace {

QLabel* addVoice(QWidget* parent, QGridLayout& grid, int row, const char* voice) {
    auto* label = new QLabel(parent);
    label->setProperty("voice", voice);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->hide();
    grid.addWidget(label, row, 0, 1, 4);
    return label;
}

void setWords(QLabel* label, const QString& words) {
    label->setText(words);
    label->setVisible(!words.isEmpty());
}

} // namespace

EntryForm::EntryForm(const std::vector<EntryField>& fields, const QString& writeWords,
                     QWidget* parent)
    : QFrame(parent), write_(new QPushButton(writeWords, this)), grid_(new QGridLayout(this)) {
    setObjectName(QStringLiteral("entryForm"));
    grid_->setContentsMargins(10, 8, 10, 8);
    grid_->setHorizontalSpacing(8);
    grid_->setVerticalSpacing(5);
    grid_->setColumnStretch(1, 1);
    grid_->setColumnStretch(3, 1);
    title_ = addVoice(this, *grid_, 0, "heading");
    int row = 1;
    int column = 0;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        auto* line = new EntryLine(this);
        line->setAccessibleName(fields[i].label);
        line->setToolTip(fields[i].help);
        line->setWhenEmpty(fields[i].whenEmpty);
        auto* name = new QLabel(fields[i].label, this);
        name->setBuddy(line);
        grid_->addWidget(name, row, column);
        grid_->addWidget(line, row, column + 1, 1, fields[i].isWide ? 3 : 1);
        const bool isRowFull = fields[i].isWide || column > 0;
        row += isRowFull ? 1 : 0;
        column = isRowFull ? 0 : 2;
        lines_.push_back(line);
        names_.push_back(name);
        hints_.push_back(fields[i].hint);
        connect(line, &EntryLine::goneOn, this, [this, i] { goOn(i); });
        connect(line, &EntryLine::writeAsked, this, &EntryForm::askToWrite);
        connect(line, &EntryLine::left, this, &EntryForm::left);
        connect(line, &EntryLine::textChanged, this, &EntryForm::changed);
        connect(line, &EntryLine::wrongChanged, this,
                [this, i](bool isWrong) { setWords(hint_, isWrong ? hints_[i] : QString()); });
    }
    const int below = row + 1;
    hint_ = addVoice(this, *grid_, below, "wrong");
    warned_ = addVoice(this, *grid_, below + 1, "wrong");
    said_ = addVoice(this, *grid_, below + 2, "second");
    write_->setToolTip(tr("Return on the last line, or Ctrl+Return on any; Escape leaves it "
                          "unwritten"));
    write_->setAutoDefault(false);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(8);
    buttons->addWidget(write_);
    buttons->addStretch(1);
    grid_->addLayout(buttons, below + 3, 0, 1, 4);
    connect(write_, &QPushButton::clicked, this, &EntryForm::askToWrite);
    hide();
}

void EntryForm::addButton(QPushButton* button) {
    auto* row = static_cast<QHBoxLayout*>(grid_->itemAt(grid_->count() - 1)->layout());
    row->insertWidget(row->count() - 1, button);
}

void EntryForm::begin(const QString& title, int first) {
    setWords(title_, title);
    for (EntryLine* line : lines_) {
        line->clear();
        line->offer({});
    }
    for (QLabel* label : {hint_, said_, warned_}) {
        setWords(label, {});
    }
    show();
    line(first).setFocus(Qt::ShortcutFocusReason);
}

void EntryForm::end() {
    hide();
}

QString EntryForm::text(int field) const {
    return lines_.at(static_cast<std::size_t>(field))->text().trimmed();
}

bool EntryForm::isShown(std::size_t field) const {
    return lines_[field]->isVisibleTo(this);
}

void EntryForm::setFieldShown(int field, bool isShown) {
    lines_.at(static_cast<std::size_t>(field))->setVisible(isShown);
    names_.at(static_cast<std::size_t>(field))->setVisible(isShown);
}

void EntryForm::say(const QString& words) {
    setWords(said_, words);
}

void EntryForm::warn(const QString& words) {
    setWords(warned_, words);
}

void EntryForm::goOn(std::size_t from) {
    for (std::size_t next = from + 1; next < lines_.size(); ++next) {
        // What stands there already is passed over; Tab goes to it.
        const EntryLine& line = *lines_[next];
        const bool isFilled = !line.text().isEmpty() && !line.isModified() && line.isRight();
        if (isShown(next) && !isFilled) {
            lines_[next]->setFocus(Qt::TabFocusReason);
            return;
        }
    }
    askToWrite();
}

void EntryForm::askToWrite() {
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        if (isShown(i) && !lines_[i]->check()) {
            lines_[i]->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    emit writeAsked();
}

void EntryForm::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) { // From a button of it.
        emit left();
        return;
    }
    QFrame::keyPressEvent(event);
}

} // namespace widgets
