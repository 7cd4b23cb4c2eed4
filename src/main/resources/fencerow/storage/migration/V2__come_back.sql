-- Visits that shoppers may come back to: sealed, found by what is derived from the code on the shopper's paper.

create table come_back (
    handle   text not null primary key,
    last_day text not null,             -- deleted the day after
    sealed   text not null              -- base 64
);

create index come_back_by_last_day on come_back (last_day);
