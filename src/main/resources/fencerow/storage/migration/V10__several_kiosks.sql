-- What several kiosks need who share one database.

create table instance (
    id text not null                    -- of these data; another one means other data
);

create table delivery (
    kiosk text    not null primary key,
    batch integer not null              -- the last parcel of counts that it handed in
);
