-- The shared secret of the second factor is kept encrypted, which takes more room. What is there
-- already is encrypted when the application starts: the key is none of the database's business.

alter table person alter column totp_secret set data type varchar(200);
