-- Whole numbers and ISO 8601 texts only, so that any SQL database means the same by them.

create table unit (
    id         text    not null primary key,
    place      integer not null,            -- in the stock list
    origin     text    not null,            -- file | desk: who brought it
    sale       text    not null,            -- open | held | sold
    sale_day   text,                        -- last day of a hold, day of a sale
    version    integer not null,
    changed_at text    not null
);

create table unit_cell (
    unit    text not null references unit (id) on delete cascade,
    field   text not null,
    content text not null,
    primary key (unit, field)
);

create table unit_change (
    number      integer not null primary key,
    unit        text    not null,
    changed_at  text    not null,
    origin      text    not null,
    field       text    not null,
    before_text text    not null,
    after_text  text    not null
);

create index unit_change_by_unit on unit_change (unit);

create table revision (number integer not null);
insert into revision (number) values (0);

create table journal (
    day     text    not null,
    kind    text    not null,
    subject text    not null,
    detail  text    not null,
    total   integer not null,
    primary key (day, kind, subject, detail)
);

create table memory (
    name    text not null primary key,
    content text not null
);

create table column_name (
    written text not null primary key,
    field   text not null
);
